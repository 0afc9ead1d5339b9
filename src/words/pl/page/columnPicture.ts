import type { FirstWords } from '../../catalogue.ts';
import { ordinal } from '../grammar.ts';

export const columnLabels: FirstWords['columnLabels'] = {
  handle: 'Długość słupa',
  reading: (centimetres) => `${centimetres} cm na linijce`,
  notSet: 'nieustawiona',
  unit: 'cm',
  node: 'W',
  antinode: 'S',
  order: (order) => ordinal(order),
};

export const columnSpoken: FirstWords['columnSpoken'] = {
  column: {
    closed: 'Słup powietrza jednostronnie zamknięty.',
    open: 'Słup powietrza obustronnie otwarty.',
  },
  drawnAt: (centimetres) => `Narysowano go przy ${centimetres} cm na linijce.`,
  noMarks: 'Na linijce nie ma jeszcze znaczników.',
  marks: (marks) => `Znaczniki: ${marks}.`,
  marksAndMore: (marks, more) => `Znaczniki: ${marks} i jeszcze ${more}.`,
  mark: (centimetres) => `przy ${centimetres} cm`,
  perhapsMark: (centimetres) => `może przy ${centimetres} cm`,
  resonance: (order, centimetres) => `${ordinal(order)} rezonans przy ${centimetres} cm`,
  perhapsResonance: (order, centimetres) => `może ${ordinal(order)} rezonans przy ${centimetres} cm`,
};
