import type { LaterWords } from '../catalogue.ts';
import { counted, ordinal, plural } from './grammar.ts';

export const sweep: LaterWords['sweep'] = {
  order: (order) => ordinal(order),
  noOrder: 'ninguna',
  outlier: 'valor atípico',
  basis: (resonances, factor, endMm) =>
    `95\u00a0%, k = ${factor}, con ${counted(resonances, 'resonancia', 'resonancias')}. La corrección de extremo de ${endMm}\u00a0mm es la prevista: una sola longitud no puede medirla.`,
  wallsCorrected: 'Está corregido el frenado de la onda por la pared.',
  noDiameter:
    'Anota el diámetro del tubo: sin él, la corrección de extremo es una suposición y no se corrige el frenado por la pared.',
  lost: (seconds) => `Se perdieron ${seconds}\u00a0s de sonido.`,
  lostMoment: 'El sonido se cortó un momento.',
  noneNear: 'Cerca no había ninguna resonancia.',
  nearLost: (resonances, hertz) =>
    `${plural(resonances, 'No se usa la resonancia', 'No se usan las resonancias')} cerca de ${hertz}\u00a0Hz. Cierra otros programas y repite el barrido.`,
  note: (cm, list, speed) => `Barrido a ${cm}\u00a0cm: ${list}; velocidad ${speed}.`,
  found: (order, frequency) => `${ordinal(order)} ${frequency}`,
  remarks: {
    practice: 'Simulado en la columna de práctica.',
    unproven: 'El nivel no se comprobó.',
    doubtful: 'El nivel está en duda.',
  },
  endsBelowStart: 'El barrido debe acabar en una frecuencia más alta que la del comienzo.',
  beyondTheory: (mm, highestHz, toHz) =>
    `En la práctica, un tubo de ${mm}\u00a0mm se puede barrer hasta ${highestHz}\u00a0Hz, no hasta ${toHz}\u00a0Hz: más allá no hay teoría para su extremo abierto. Acaba antes el barrido o toma un tubo más estrecho.`,
};
