import type { FirstWords } from '../catalogue.ts';

export const outlierCause: FirstWords['outlierCause'] = {
  setOrder: (setOrder, fittingOrder) =>
    `Se fijó el orden ${setOrder}, pero la longitud encaja con el orden ${fittingOrder}.`,
  tooLong: (centimetres, causes) => `${centimetres}\u00a0cm de más: ${causes}`,
  tooShort: (centimetres, causes) => `${centimetres}\u00a0cm de menos: ${causes}`,
  unknown: 'vuelve a leer la longitud, o busca otra vez la resonancia.',
  or: ' O bien: ',
  misread: {
    0.01: '¿leída con un error de 1\u00a0cm?',
    0.05: '¿leída con un error de 5\u00a0cm?',
    0.1: '¿leída con un error de 10\u00a0cm?',
    0.2: '¿leída con un error de 20\u00a0cm?',
    0.5: '¿leída con un error de medio metro?',
    1: '¿leída con un error de un metro?',
  },
  swappedDigits: '¿dos cifras cambiadas de sitio?',
  slippedPoint: '¿la coma decimal mal puesta?',
  otherColumn: {
    closed: (order) => `encaja como orden ${order} de una columna cerrada.`,
    open: (order) => `encaja como orden ${order} de una columna abierta.`,
  },
  otherFork: (order, hertz) =>
    `encaja como orden ${order} del diapasón de ${hertz}\u00a0Hz: ¿era ese diapasón?`,
};
