import type { LaterWords } from '../catalogue.ts';

export const comparison: LaterWords['comparison'] = {
  faster: (one, other, mps, uncertaintyMps) =>
    `«\u00a0${one}\u00a0» par rapport à «\u00a0${other}\u00a0»\u00a0: ${mps} m/s de plus, ± ${uncertaintyMps} m/s (95 %). La différence est réelle.`,
  slower: (one, other, mps, uncertaintyMps) =>
    `«\u00a0${one}\u00a0» par rapport à «\u00a0${other}\u00a0»\u00a0: ${mps} m/s de moins, ± ${uncertaintyMps} m/s (95 %). La différence est réelle.`,
  alike: (one, other, mps, uncertaintyMps) =>
    `«\u00a0${one}\u00a0» par rapport à «\u00a0${other}\u00a0»\u00a0: ${mps} m/s d’écart, ± ${uncertaintyMps} m/s (95 %). Ces repères ne montrent pas de différence réelle.`,
  agrees: {
    faster: (mps) => `Pour leur air, la théorie prévoit ${mps} m/s de plus. Les deux s’accordent.`,
    slower: (mps) => `Pour leur air, la théorie prévoit ${mps} m/s de moins. Les deux s’accordent.`,
    alike: 'Pour leur air, la théorie ne prévoit pas de différence. Les deux s’accordent.',
  },
  disagrees: {
    faster: (mps) => `Pour leur air, la théorie prévoit ${mps} m/s de plus. Les deux ne s’accordent pas.`,
    slower: (mps) => `Pour leur air, la théorie prévoit ${mps} m/s de moins. Les deux ne s’accordent pas.`,
    alike: 'Pour leur air, la théorie ne prévoit pas de différence. Les deux ne s’accordent pas.',
  },
  noResult: (group, warning) => `${group}\u00a0: ${warning}`,
  fork: (hertz) => `diapason de ${hertz} Hz`,
  ends: { closed: 'colonne fermée', open: 'colonne ouverte' },
};
