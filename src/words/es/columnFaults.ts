import type { FirstWords } from '../catalogue.ts';

export const columnFault: FirstWords['columnFault'] = {
  mark: (number, { zeroOffset, reading, column, lowest, highest }) =>
    `Con el desfase del cero de ${zeroOffset}\u00a0cm, la marca ${number} en ${reading}\u00a0cm sería una columna de ${column}\u00a0cm: las lecturas deben ir de ${lowest}\u00a0cm a ${highest}\u00a0cm. Corrige el desfase o la longitud de la marca.`,
  deletedMark: ({ zeroOffset, reading, column, lowest, highest }) =>
    `Con el desfase del cero de ${zeroOffset}\u00a0cm, la marca borrada en ${reading}\u00a0cm sería una columna de ${column}\u00a0cm: las lecturas deben ir de ${lowest}\u00a0cm a ${highest}\u00a0cm. Corrige el desfase, o recupera esa marca y corrige su longitud.`,
  reading: ({ zeroOffset, reading, column, lowest, highest }) =>
    `Con el desfase del cero de ${zeroOffset}\u00a0cm, una lectura de ${reading}\u00a0cm sería una columna de ${column}\u00a0cm: las lecturas deben ir de ${lowest}\u00a0cm a ${highest}\u00a0cm. Corrígela, o corrige el desfase del cero en Montaje.`,
};
