import type { FirstWords } from '../../catalogue.ts';
import { ordinal } from '../grammar.ts';

export const columnLabels: FirstWords['columnLabels'] = {
  handle: 'Longitud de la columna',
  reading: (centimetres) => `${centimetres}\u00a0cm en la regla`,
  notSet: 'sin fijar',
  unit: 'cm',
  node: 'N',
  antinode: 'V',
  resonance: (order, centimetres) => `${ordinal(order)} · ${centimetres}`,
};

export const columnSpoken: FirstWords['columnSpoken'] = {
  column: {
    closed: 'Columna de aire cerrada por un extremo.',
    open: 'Columna de aire abierta por los dos extremos.',
  },
  drawnAt: (centimetres) => `Está dibujada a ${centimetres}\u00a0cm en la regla.`,
  noMarks: 'Todavía no hay marcas en la regla.',
  marks: (marks) => `Marcas: ${marks}.`,
  marksAndMore: (marks, more) => `Marcas: ${marks} y ${more} más.`,
  mark: (centimetres) => `a ${centimetres}\u00a0cm`,
  perhapsMark: (centimetres) => `quizá a ${centimetres}\u00a0cm`,
  resonance: (order, centimetres) => `${ordinal(order)} resonancia a ${centimetres}\u00a0cm`,
  perhapsResonance: (order, centimetres) => `quizá ${ordinal(order)} resonancia a ${centimetres}\u00a0cm`,
};
