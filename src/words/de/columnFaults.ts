import type { FirstWords } from '../catalogue.ts';

export const columnFault: FirstWords['columnFault'] = {
  mark: (number, { zeroOffset, reading, column, lowest, highest }) =>
    `Mit der Nullpunktverschiebung von ${zeroOffset}\u00a0cm wäre Marke ${number} bei ${reading}\u00a0cm eine Säule von ${column}\u00a0cm: Ablesungen müssen zwischen ${lowest}\u00a0cm und ${highest}\u00a0cm liegen. Korrigiere die Verschiebung oder die Länge der Marke.`,
  deletedMark: ({ zeroOffset, reading, column, lowest, highest }) =>
    `Mit der Nullpunktverschiebung von ${zeroOffset}\u00a0cm wäre die gelöschte Marke bei ${reading}\u00a0cm eine Säule von ${column}\u00a0cm: Ablesungen müssen zwischen ${lowest}\u00a0cm und ${highest}\u00a0cm liegen. Korrigiere die Verschiebung, oder hol diese Marke zurück und korrigiere ihre Länge.`,
  reading: ({ zeroOffset, reading, column, lowest, highest }) =>
    `Mit der Nullpunktverschiebung von ${zeroOffset}\u00a0cm wäre eine Ablesung von ${reading}\u00a0cm eine Säule von ${column}\u00a0cm: Ablesungen müssen zwischen ${lowest}\u00a0cm und ${highest}\u00a0cm liegen. Korrigiere sie, oder die Nullpunktverschiebung unter Aufbau.`,
};
