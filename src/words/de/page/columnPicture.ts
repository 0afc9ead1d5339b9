import type { FirstWords } from '../../catalogue.ts';
import { ordinal } from '../grammar.ts';

export const columnLabels: FirstWords['columnLabels'] = {
  handle: 'Länge der Säule',
  reading: (centimetres) => `${centimetres}\u00a0cm am Maßstab`,
  notSet: 'nicht eingestellt',
  unit: 'cm',
  node: 'K',
  antinode: 'B',
  resonance: (order, centimetres) => `n = ${order}: ${centimetres}`,
};

export const columnSpoken: FirstWords['columnSpoken'] = {
  column: {
    closed: 'Luftsäule, einseitig geschlossen.',
    open: 'Luftsäule, beidseitig offen.',
  },
  drawnAt: (centimetres) => `Sie ist bei ${centimetres}\u00a0cm am Maßstab gezeichnet.`,
  noMarks: 'Noch keine Marken am Maßstab.',
  marks: (marks) => `Marken: ${marks}.`,
  marksAndMore: (marks, more) => `Marken: ${marks} und ${more} weitere.`,
  mark: (centimetres) => `bei ${centimetres}\u00a0cm`,
  perhapsMark: (centimetres) => `vielleicht bei ${centimetres}\u00a0cm`,
  resonance: (order, centimetres) => `${ordinal(order)} Resonanz bei ${centimetres}\u00a0cm`,
  perhapsResonance: (order, centimetres) =>
    `vielleicht ${ordinal(order)} Resonanz bei ${centimetres}\u00a0cm`,
};
