import type { LaterWords } from '../catalogue.ts';

export const comparison: LaterWords['comparison'] = {
  faster: (one, other, mps, uncertaintyMps) =>
    `«${one}» frente a «${other}»: ${mps}\u00a0m/s más, ± ${uncertaintyMps}\u00a0m/s (95\u00a0%). La diferencia es real.`,
  slower: (one, other, mps, uncertaintyMps) =>
    `«${one}» frente a «${other}»: ${mps}\u00a0m/s menos, ± ${uncertaintyMps}\u00a0m/s (95\u00a0%). La diferencia es real.`,
  alike: (one, other, mps, uncertaintyMps) =>
    `«${one}» frente a «${other}»: ${mps}\u00a0m/s de diferencia, ± ${uncertaintyMps}\u00a0m/s (95\u00a0%). Estas marcas no muestran ninguna diferencia real.`,
  agrees: {
    faster: (mps) => `Para el aire de ambos, la teoría prevé ${mps}\u00a0m/s más. Concuerda.`,
    slower: (mps) => `Para el aire de ambos, la teoría prevé ${mps}\u00a0m/s menos. Concuerda.`,
    alike: 'Para el aire de ambos, la teoría no prevé ninguna diferencia. Concuerda.',
  },
  disagrees: {
    faster: (mps) => `Para el aire de ambos, la teoría prevé ${mps}\u00a0m/s más. No concuerda.`,
    slower: (mps) => `Para el aire de ambos, la teoría prevé ${mps}\u00a0m/s menos. No concuerda.`,
    alike: 'Para el aire de ambos, la teoría no prevé ninguna diferencia. No concuerda.',
  },
  noResult: (group, warning) => `${group}: ${warning}`,
  fork: (hertz) => `diapasón de ${hertz}\u00a0Hz`,
  ends: { closed: 'columna cerrada', open: 'columna abierta' },
};
