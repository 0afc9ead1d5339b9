import type { LaterWords } from '../catalogue.ts';

export const comparison: LaterWords['comparison'] = {
  faster: (one, other, mps, uncertaintyMps) =>
    `«\u00a0${one}\u00a0» par rapport à «\u00a0${other}\u00a0»\u00a0: ${mps}\u00a0m/s de plus, ± ${uncertaintyMps}\u00a0m/s (95\u00a0%). La différence est réelle.`,
  slower: (one, other, mps, uncertaintyMps) =>
    `«\u00a0${one}\u00a0» par rapport à «\u00a0${other}\u00a0»\u00a0: ${mps}\u00a0m/s de moins, ± ${uncertaintyMps}\u00a0m/s (95\u00a0%). La différence est réelle.`,
  alike: (one, other, mps, uncertaintyMps) =>
    `«\u00a0${one}\u00a0» par rapport à «\u00a0${other}\u00a0»\u00a0: ${mps}\u00a0m/s d’écart, ± ${uncertaintyMps}\u00a0m/s (95\u00a0%). Ces repères ne montrent pas de différence réelle.`,
  agrees: {
    faster: (mps) => `Pour leur air, la théorie prévoit ${mps}\u00a0m/s de plus. Les deux s’accordent.`,
    slower: (mps) => `Pour leur air, la théorie prévoit ${mps}\u00a0m/s de moins. Les deux s’accordent.`,
    alike: 'Pour leur air, la théorie ne prévoit pas de différence. Les deux s’accordent.',
  },
  disagrees: {
    faster: (mps) =>
      `Pour leur air, la théorie prévoit ${mps}\u00a0m/s de plus. Les deux ne s’accordent pas.`,
    slower: (mps) =>
      `Pour leur air, la théorie prévoit ${mps}\u00a0m/s de moins. Les deux ne s’accordent pas.`,
    alike: 'Pour leur air, la théorie ne prévoit pas de différence. Les deux ne s’accordent pas.',
  },
  noResult: (group, warning) => `${group}\u00a0: ${warning}`,
  fork: (hertz) => `diapason de ${hertz}\u00a0Hz`,
  ends: { closed: 'colonne fermée', open: 'colonne ouverte' },
};
