import type { FirstWords } from '../catalogue.ts';

export const columnFault: FirstWords['columnFault'] = {
  mark: (number, { zeroOffset, reading, column, lowest, highest }) =>
    `Con el desfase del cero de ${zeroOffset} cm, la marca ${number} en ${reading} cm sería una columna de ${column} cm: las lecturas deben ir de ${lowest} cm a ${highest} cm. Corrige el desfase o la longitud de la marca.`,
  deletedMark: ({ zeroOffset, reading, column, lowest, highest }) =>
    `Con el desfase del cero de ${zeroOffset} cm, la marca borrada en ${reading} cm sería una columna de ${column} cm: las lecturas deben ir de ${lowest} cm a ${highest} cm. Corrige el desfase, o recupera esa marca y corrige su longitud.`,
  reading: ({ zeroOffset, reading, column, lowest, highest }) =>
    `Con el desfase del cero de ${zeroOffset} cm, una lectura de ${reading} cm sería una columna de ${column} cm: las lecturas deben ir de ${lowest} cm a ${highest} cm. Corrígela, o corrige el desfase del cero en Montaje.`,
};
