import type { LaterWords } from '../../catalogue.ts';
import { fixed, stampedHertz } from '../../numbers.ts';

export const drawing: LaterWords['drawing'] = {
  title: 'A montagem, em escala ao longo da régua',
  fork: (hz) => `diapasão, ${stampedHertz(hz)}\u00a0Hz`,
  column: (ends, diameterM) =>
    diameterM === null
      ? `coluna de ar, ${ends}`
      : `coluna de ar, ${ends}, diâmetro interno ${fixed(diameterM * 1000, 1)}\u00a0mm`,
  tick: (m) => fixed(m * 100, 0),
  centimetres: (m) => fixed(m * 100, 1),
  below: (zeroOffsetM) =>
    zeroOffsetM === 0
      ? 'régua, cm; abaixo, os comprimentos lidos na ressonância'
      : `régua, cm, com desvio do zero de ${fixed(zeroOffsetM * 1000, 1)}\u00a0mm; abaixo, os comprimentos lidos na ressonância`,
  caption:
    'A montagem, em escala ao longo da régua, mas não na largura. Linhas abaixo da régua: comprimentos em que a coluna ressoou.',
};
