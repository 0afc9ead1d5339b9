import type { FirstWords } from '../catalogue.ts';

export const columnFault: FirstWords['columnFault'] = {
  mark: (number, { zeroOffset, reading, column, lowest, highest }) =>
    `Mit der Nullpunktverschiebung von ${zeroOffset} cm wäre Marke ${number} bei ${reading} cm eine Säule von ${column} cm: Ablesungen müssen zwischen ${lowest} cm und ${highest} cm liegen. Korrigiere die Verschiebung oder die Länge der Marke.`,
  deletedMark: ({ zeroOffset, reading, column, lowest, highest }) =>
    `Mit der Nullpunktverschiebung von ${zeroOffset} cm wäre die gelöschte Marke bei ${reading} cm eine Säule von ${column} cm: Ablesungen müssen zwischen ${lowest} cm und ${highest} cm liegen. Korrigiere die Verschiebung, oder hol diese Marke zurück und korrigiere ihre Länge.`,
  reading: ({ zeroOffset, reading, column, lowest, highest }) =>
    `Mit der Nullpunktverschiebung von ${zeroOffset} cm wäre eine Ablesung von ${reading} cm eine Säule von ${column} cm: Ablesungen müssen zwischen ${lowest} cm und ${highest} cm liegen. Korrigiere sie, oder die Nullpunktverschiebung unter Aufbau.`,
};
