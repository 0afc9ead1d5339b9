import type { FirstWords } from '../catalogue.ts';

export const resultFact: FirstWords['resultFact'] = {
  uncertainty: 'Incertitude',
  coverage: (factor) => `l’intervalle ± contient la valeur vraie dans 95 cas sur 100 (k = ${factor})`,
  endCorrection: 'Correction d’extrémité',
  endFrom: {
    measured: (mm, uncertaintyMm) =>
      `${mm}\u00a0mm, mesurée\u00a0; incertitude-type ${uncertaintyMm}\u00a0mm`,
    theory: (mm, uncertaintyMm) =>
      `${mm}\u00a0mm, d’après la théorie\u00a0; incertitude-type ${uncertaintyMm}\u00a0mm`,
    assumed: (mm, uncertaintyMm) =>
      `${mm}\u00a0mm, supposée\u00a0; incertitude-type ${uncertaintyMm}\u00a0mm`,
  },
  theory: 'Vitesse prévue',
  noTheory: 'notez la température de l’air pour comparer',
  difference: 'Écart à la vitesse prévue',
  apart: (mps) => `${mps}\u00a0m/s, plus que les incertitudes ne l’expliquent`,
  within: (mps) => `${mps}\u00a0m/s, dans les incertitudes`,
};
