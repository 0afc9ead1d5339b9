import type { LaterWords } from '../catalogue.ts';

export const comparison: LaterWords['comparison'] = {
  faster: (one, other, mps, uncertaintyMps) =>
    `“${one}” em relação a “${other}”: ${mps}\u00a0m/s a mais, ± ${uncertaintyMps}\u00a0m/s (95\u00a0%). A diferença é real.`,
  slower: (one, other, mps, uncertaintyMps) =>
    `“${one}” em relação a “${other}”: ${mps}\u00a0m/s a menos, ± ${uncertaintyMps}\u00a0m/s (95\u00a0%). A diferença é real.`,
  alike: (one, other, mps, uncertaintyMps) =>
    `“${one}” em relação a “${other}”: diferença de ${mps}\u00a0m/s, ± ${uncertaintyMps}\u00a0m/s (95\u00a0%). Estas marcas não mostram uma diferença real.`,
  agrees: {
    faster: (mps) => `A teoria prevê ${mps}\u00a0m/s a mais para esse ar. Medida e teoria concordam.`,
    slower: (mps) => `A teoria prevê ${mps}\u00a0m/s a menos para esse ar. Medida e teoria concordam.`,
    alike: 'A teoria não prevê diferença para esse ar. Medida e teoria concordam.',
  },
  disagrees: {
    faster: (mps) => `A teoria prevê ${mps}\u00a0m/s a mais para esse ar. Medida e teoria não concordam.`,
    slower: (mps) => `A teoria prevê ${mps}\u00a0m/s a menos para esse ar. Medida e teoria não concordam.`,
    alike: 'A teoria não prevê diferença para esse ar. Medida e teoria não concordam.',
  },
  noResult: (group, warning) => `${group}: ${warning}`,
  fork: (hertz) => `diapasão de ${hertz}\u00a0Hz`,
  ends: { closed: 'coluna fechada', open: 'coluna aberta' },
};
