import type { FirstWords } from '../catalogue.ts';

export const outlierCause: FirstWords['outlierCause'] = {
  setOrder: (setOrder, fittingOrder) =>
    `L’ordre ${setOrder} a été fixé, mais la longueur convient à l’ordre ${fittingOrder}.`,
  tooLong: (centimetres, causes) => `${centimetres}\u00a0cm trop long\u00a0: ${causes}`,
  tooShort: (centimetres, causes) => `${centimetres}\u00a0cm trop court\u00a0: ${causes}`,
  unknown: 'relisez la longueur, ou cherchez à nouveau la résonance.',
  or: ' Ou ',
  misread: {
    0.01: 'erreur de lecture de 1\u00a0cm ?',
    0.05: 'erreur de lecture de 5\u00a0cm ?',
    0.1: 'erreur de lecture de 10\u00a0cm ?',
    0.2: 'erreur de lecture de 20\u00a0cm ?',
    0.5: 'erreur de lecture d’un demi-mètre ?',
    1: 'erreur de lecture d’un mètre ?',
  },
  swappedDigits: 'deux chiffres intervertis ?',
  slippedPoint: 'virgule mal placée ?',
  otherColumn: {
    closed: (order) => `convient à l’ordre ${order} d’une colonne fermée.`,
    open: (order) => `convient à l’ordre ${order} d’une colonne ouverte.`,
  },
  otherFork: (order, hertz) =>
    `convient à l’ordre ${order} du diapason de ${hertz}\u00a0Hz\u00a0: était-ce ce diapason\u00a0?`,
};
