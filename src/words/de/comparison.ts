import type { LaterWords } from '../catalogue.ts';

export const comparison: LaterWords['comparison'] = {
  faster: (one, other, mps, uncertaintyMps) =>
    `„${one}“ gegenüber „${other}“: (${mps} ± ${uncertaintyMps}) m/s schneller (95\u00a0%). Der Unterschied ist echt.`,
  slower: (one, other, mps, uncertaintyMps) =>
    `„${one}“ gegenüber „${other}“: (${mps} ± ${uncertaintyMps}) m/s langsamer (95\u00a0%). Der Unterschied ist echt.`,
  alike: (one, other, mps, uncertaintyMps) =>
    `„${one}“ gegenüber „${other}“: (${mps} ± ${uncertaintyMps}) m/s Unterschied (95\u00a0%). Diese Marken zeigen keinen echten Unterschied.`,
  agrees: {
    faster: (mps) => `Theorie für ihre Luft: ${mps}\u00a0m/s schneller. Messung und Theorie stimmen überein.`,
    slower: (mps) => `Theorie für ihre Luft: ${mps}\u00a0m/s langsamer. Messung und Theorie stimmen überein.`,
    alike: 'Theorie für ihre Luft: kein Unterschied. Messung und Theorie stimmen überein.',
  },
  disagrees: {
    faster: (mps) =>
      `Theorie für ihre Luft: ${mps}\u00a0m/s schneller. Messung und Theorie stimmen nicht überein.`,
    slower: (mps) =>
      `Theorie für ihre Luft: ${mps}\u00a0m/s langsamer. Messung und Theorie stimmen nicht überein.`,
    alike: 'Theorie für ihre Luft: kein Unterschied. Messung und Theorie stimmen nicht überein.',
  },
  noResult: (group, warning) => `${group}: ${warning}`,
  fork: (hertz) => `Gabel mit ${hertz}\u00a0Hz`,
  ends: { closed: 'geschlossene Säule', open: 'offene Säule' },
};
