import type { FirstWords } from '../../catalogue.ts';
import { ordinal } from '../grammar.ts';

export const columnLabels: FirstWords['columnLabels'] = {
  handle: 'Długość słupa',
  reading: (centimetres) => `${centimetres}\u00a0cm na linijce`,
  notSet: 'nieustawiona',
  unit: 'cm',
  node: 'W',
  antinode: 'S',
  resonance: (order, centimetres) => `n = ${order}: ${centimetres}`,
};

export const columnSpoken: FirstWords['columnSpoken'] = {
  column: {
    closed: 'Słup powietrza jednostronnie zamknięty.',
    open: 'Słup powietrza obustronnie otwarty.',
  },
  drawnAt: (centimetres) => `Narysowano go przy ${centimetres}\u00a0cm na linijce.`,
  noMarks: 'Na linijce nie ma jeszcze znaczników.',
  marks: (marks) => `Znaczniki: ${marks}.`,
  marksAndMore: (marks, more) => `Znaczniki: ${marks} i jeszcze ${more}.`,
  mark: (centimetres) => `przy ${centimetres}\u00a0cm`,
  perhapsMark: (centimetres) => `może przy ${centimetres}\u00a0cm`,
  resonance: (order, centimetres) => `${ordinal(order)} rezonans przy ${centimetres}\u00a0cm`,
  perhapsResonance: (order, centimetres) => `może ${ordinal(order)} rezonans przy ${centimetres}\u00a0cm`,
};
