import type { LaterWords } from '../../catalogue.ts';
import { fixed, stampedHertz } from '../../numbers.ts';

export const drawing: LaterWords['drawing'] = {
  title: 'Le montage, à l’échelle le long de sa règle',
  fork: (hz) => `diapason, ${stampedHertz(hz)}\u00a0Hz`,
  column: (ends, diameterM) =>
    diameterM === null
      ? `colonne d’air, ${ends}`
      : `colonne d’air, ${ends}, diamètre intérieur ${fixed(diameterM * 1000, 1)}\u00a0mm`,
  tick: (m) => fixed(m * 100, 0),
  centimetres: (m) => fixed(m * 100, 1),
  below: (zeroOffsetM) =>
    zeroOffsetM === 0
      ? 'règle, cm ; dessous, les longueurs lues à la résonance'
      : `règle, cm, décalage du zéro ${fixed(zeroOffsetM * 1000, 1)}\u00a0mm ; dessous, les longueurs lues à la résonance`,
  caption:
    'Le montage, à l’échelle le long de la règle mais pas en travers. Traits sous la règle : longueurs où la colonne résonnait.',
};
