import type { LaterWords } from '../catalogue.ts';

export const comparison: LaterWords['comparison'] = {
  faster: (one, other, mps, uncertaintyMps) =>
    `«${one}» frente a «${other}»: ${mps} m/s más, ± ${uncertaintyMps} m/s (95 %). La diferencia es real.`,
  slower: (one, other, mps, uncertaintyMps) =>
    `«${one}» frente a «${other}»: ${mps} m/s menos, ± ${uncertaintyMps} m/s (95 %). La diferencia es real.`,
  alike: (one, other, mps, uncertaintyMps) =>
    `«${one}» frente a «${other}»: ${mps} m/s de diferencia, ± ${uncertaintyMps} m/s (95 %). Estas marcas no muestran ninguna diferencia real.`,
  agrees: {
    faster: (mps) => `Para el aire de ambos, la teoría prevé ${mps} m/s más. Concuerda.`,
    slower: (mps) => `Para el aire de ambos, la teoría prevé ${mps} m/s menos. Concuerda.`,
    alike: 'Para el aire de ambos, la teoría no prevé ninguna diferencia. Concuerda.',
  },
  disagrees: {
    faster: (mps) => `Para el aire de ambos, la teoría prevé ${mps} m/s más. No concuerda.`,
    slower: (mps) => `Para el aire de ambos, la teoría prevé ${mps} m/s menos. No concuerda.`,
    alike: 'Para el aire de ambos, la teoría no prevé ninguna diferencia. No concuerda.',
  },
  noResult: (group, warning) => `${group}: ${warning}`,
  fork: (hertz) => `diapasón de ${hertz} Hz`,
  ends: { closed: 'columna cerrada', open: 'columna abierta' },
};
