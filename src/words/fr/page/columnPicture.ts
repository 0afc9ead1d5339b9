import type { FirstWords } from '../../catalogue.ts';
import { ordinal } from '../grammar.ts';

export const columnLabels: FirstWords['columnLabels'] = {
  handle: 'Longueur de la colonne',
  reading: (centimetres) => `${centimetres}\u00a0cm sur la règle`,
  notSet: 'non réglée',
  unit: 'cm',
  node: 'N',
  antinode: 'V',
  resonance: (order, centimetres) => `${ordinal(order)} · ${centimetres}`,
};

export const columnSpoken: FirstWords['columnSpoken'] = {
  column: {
    closed: 'Colonne d’air fermée à une extrémité.',
    open: 'Colonne d’air ouverte aux deux extrémités.',
  },
  drawnAt: (centimetres) => `Elle est dessinée à ${centimetres}\u00a0cm sur la règle.`,
  noMarks: 'Pas encore de repère sur la règle.',
  marks: (marks) => `Repères\u00a0: ${marks}.`,
  marksAndMore: (marks, more) => `Repères\u00a0: ${marks} et ${more} de plus.`,
  mark: (centimetres) => `à ${centimetres}\u00a0cm`,
  perhapsMark: (centimetres) => `peut-être à ${centimetres}\u00a0cm`,
  resonance: (order, centimetres) => `${ordinal(order)} résonance à ${centimetres}\u00a0cm`,
  perhapsResonance: (order, centimetres) => `peut-être ${ordinal(order)} résonance à ${centimetres}\u00a0cm`,
};
