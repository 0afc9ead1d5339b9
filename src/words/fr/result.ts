import type { FirstWords } from '../catalogue.ts';

export const resultFact: FirstWords['resultFact'] = {
  uncertainty: 'Incertitude',
  coverage: (factor) => `± contient la valeur vraie dans 95 cas sur 100 (k = ${factor})`,
  endCorrection: 'Correction d’extrémité',
  endFrom: {
    measured: (mm, uncertaintyMm) => `${mm} mm, mesurée\u00a0; incertitude-type ${uncertaintyMm} mm`,
    theory: (mm, uncertaintyMm) => `${mm} mm, d’après la théorie\u00a0; incertitude-type ${uncertaintyMm} mm`,
    assumed: (mm, uncertaintyMm) => `${mm} mm, supposée\u00a0; incertitude-type ${uncertaintyMm} mm`,
  },
  theory: 'Vitesse prévue',
  noTheory: 'notez la température de l’air pour comparer',
  difference: 'Écart à la vitesse prévue',
  apart: (mps) => `${mps} m/s, plus que les incertitudes ne l’expliquent`,
  within: (mps) => `${mps} m/s, dans les incertitudes`,
};
