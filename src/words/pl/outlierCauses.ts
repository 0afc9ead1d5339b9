import type { FirstWords } from '../catalogue.ts';

export const outlierCause: FirstWords['outlierCause'] = {
  setOrder: (setOrder, fittingOrder) =>
    `Ustawiono rząd ${setOrder}, ale długość pasuje do rzędu ${fittingOrder}.`,
  tooLong: (centimetres, causes) => `o ${centimetres}\u00a0cm za długo: ${causes}`,
  tooShort: (centimetres, causes) => `o ${centimetres}\u00a0cm za krótko: ${causes}`,
  unknown: 'odczytaj ponownie albo poszukaj rezonansu jeszcze raz.',
  or: ' Albo ',
  misread: {
    0.01: 'błąd odczytu o 1\u00a0cm?',
    0.05: 'błąd odczytu o 5\u00a0cm?',
    0.1: 'błąd odczytu o 10\u00a0cm?',
    0.2: 'błąd odczytu o 20\u00a0cm?',
    0.5: 'błąd odczytu o pół metra?',
    1: 'błąd odczytu o metr?',
  },
  swappedDigits: 'zamienione dwie cyfry?',
  slippedPoint: 'przecinek w złym miejscu?',
  otherColumn: {
    closed: (order) => `pasuje jako rząd ${order} słupa zamkniętego.`,
    open: (order) => `pasuje jako rząd ${order} słupa otwartego.`,
  },
  otherFork: (order, hertz) =>
    `pasuje jako rząd ${order} dla kamertonu ${hertz}\u00a0Hz: czy to był ten kamerton?`,
};
