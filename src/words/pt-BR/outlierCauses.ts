import type { FirstWords } from '../catalogue.ts';

export const outlierCause: FirstWords['outlierCause'] = {
  setOrder: (setOrder, fittingOrder) =>
    `Foi fixada a ordem ${setOrder}, mas o comprimento se encaixa na ordem ${fittingOrder}.`,
  tooLong: (centimetres, causes) => `${centimetres}\u00a0cm a mais: ${causes}`,
  tooShort: (centimetres, causes) => `${centimetres}\u00a0cm a menos: ${causes}`,
  unknown: 'leia de novo, ou procure a ressonância de novo.',
  or: ' Ou ',
  misread: {
    0.01: 'erro de leitura de 1\u00a0cm?',
    0.05: 'erro de leitura de 5\u00a0cm?',
    0.1: 'erro de leitura de 10\u00a0cm?',
    0.2: 'erro de leitura de 20\u00a0cm?',
    0.5: 'erro de leitura de meio metro?',
    1: 'erro de leitura de um metro?',
  },
  swappedDigits: 'dois algarismos trocados?',
  slippedPoint: 'vírgula decimal no lugar errado?',
  otherColumn: {
    closed: (order) => `encaixa-se como ordem ${order} de uma coluna fechada.`,
    open: (order) => `encaixa-se como ordem ${order} de uma coluna aberta.`,
  },
  otherFork: (order, hertz) =>
    `encaixa-se como ordem ${order} do diapasão de ${hertz}\u00a0Hz: era esse diapasão?`,
};
