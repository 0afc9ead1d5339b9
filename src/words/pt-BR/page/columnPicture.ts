import type { FirstWords } from '../../catalogue.ts';
import { ordinal } from '../grammar.ts';

export const columnLabels: FirstWords['columnLabels'] = {
  handle: 'Comprimento da coluna',
  reading: (centimetres) => `${centimetres}\u00a0cm na régua`,
  notSet: 'não definido',
  unit: 'cm',
  node: 'N',
  antinode: 'V',
  resonance: (order, centimetres) => `${ordinal(order)} · ${centimetres}`,
};

export const columnSpoken: FirstWords['columnSpoken'] = {
  column: {
    closed: 'Coluna de ar fechada em uma extremidade.',
    open: 'Coluna de ar aberta nas duas extremidades.',
  },
  drawnAt: (centimetres) => `Está desenhada em ${centimetres}\u00a0cm na régua.`,
  noMarks: 'Ainda não há marcas na régua.',
  marks: (marks) => `Marcas: ${marks}.`,
  marksAndMore: (marks, more) => `Marcas: ${marks} e mais ${more}.`,
  mark: (centimetres) => `em ${centimetres}\u00a0cm`,
  perhapsMark: (centimetres) => `talvez em ${centimetres}\u00a0cm`,
  resonance: (order, centimetres) => `${ordinal(order)} ressonância em ${centimetres}\u00a0cm`,
  perhapsResonance: (order, centimetres) => `talvez ${ordinal(order)} ressonância em ${centimetres}\u00a0cm`,
};
