import type { FirstWords } from '../catalogue.ts';

export const columnFault: FirstWords['columnFault'] = {
  mark: (number, { zeroOffset, reading, column, lowest, highest }) =>
    `Przy przesunięciu zera ${zeroOffset} cm znacznik ${number} na ${reading} cm oznaczałby słup długości ${column} cm: odczyty muszą być od ${lowest} cm do ${highest} cm. Popraw przesunięcie albo długość znacznika.`,
  deletedMark: ({ zeroOffset, reading, column, lowest, highest }) =>
    `Przy przesunięciu zera ${zeroOffset} cm usunięty znacznik na ${reading} cm oznaczałby słup długości ${column} cm: odczyty muszą być od ${lowest} cm do ${highest} cm. Popraw przesunięcie albo przywróć ten znacznik i popraw jego długość.`,
  reading: ({ zeroOffset, reading, column, lowest, highest }) =>
    `Przy przesunięciu zera ${zeroOffset} cm odczyt ${reading} cm oznaczałby słup długości ${column} cm: odczyty muszą być od ${lowest} cm do ${highest} cm. Popraw go albo przesunięcie zera w widoku Układ.`,
};
