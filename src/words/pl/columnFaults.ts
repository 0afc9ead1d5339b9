import type { FirstWords } from '../catalogue.ts';

export const columnFault: FirstWords['columnFault'] = {
  mark: (number, { zeroOffset, reading, column, lowest, highest }) =>
    `Przy przesunięciu zera ${zeroOffset}\u00a0cm znacznik ${number} na ${reading}\u00a0cm oznaczałby słup długości ${column}\u00a0cm: odczyty muszą być od ${lowest}\u00a0cm do ${highest}\u00a0cm. Popraw przesunięcie albo długość znacznika.`,
  deletedMark: ({ zeroOffset, reading, column, lowest, highest }) =>
    `Przy przesunięciu zera ${zeroOffset}\u00a0cm usunięty znacznik na ${reading}\u00a0cm oznaczałby słup długości ${column}\u00a0cm: odczyty muszą być od ${lowest}\u00a0cm do ${highest}\u00a0cm. Popraw przesunięcie albo przywróć ten znacznik i popraw jego długość.`,
  reading: ({ zeroOffset, reading, column, lowest, highest }) =>
    `Przy przesunięciu zera ${zeroOffset}\u00a0cm odczyt ${reading}\u00a0cm oznaczałby słup długości ${column}\u00a0cm: odczyty muszą być od ${lowest}\u00a0cm do ${highest}\u00a0cm. Popraw go albo przesunięcie zera w widoku Układ.`,
};
