import type { FirstWords } from '../catalogue.ts';

export const outlierCause: FirstWords['outlierCause'] = {
  setOrder: (setOrder, fittingOrder) =>
    `Festgelegt war Ordnung ${setOrder}, aber die Länge passt zu Ordnung ${fittingOrder}.`,
  tooLong: (centimetres, causes) => `${centimetres}\u00a0cm zu lang: ${causes}`,
  tooShort: (centimetres, causes) => `${centimetres}\u00a0cm zu kurz: ${causes}`,
  unknown: 'Lies noch einmal ab, oder such die Resonanz noch einmal.',
  or: ' Oder ',
  misread: {
    0.01: 'um 1\u00a0cm verlesen?',
    0.05: 'um 5\u00a0cm verlesen?',
    0.1: 'um 10\u00a0cm verlesen?',
    0.2: 'um 20\u00a0cm verlesen?',
    0.5: 'um einen halben Meter verlesen?',
    1: 'um einen Meter verlesen?',
  },
  swappedDigits: 'zwei Ziffern vertauscht?',
  slippedPoint: 'Komma an der falschen Stelle?',
  otherColumn: {
    closed: (order) => `passt als Ordnung ${order} einer geschlossenen Säule.`,
    open: (order) => `passt als Ordnung ${order} einer offenen Säule.`,
  },
  otherFork: (order, hertz) =>
    `passt als Ordnung ${order} der Gabel mit ${hertz}\u00a0Hz: War es diese Gabel?`,
};
