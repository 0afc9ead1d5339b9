import type { FirstWords } from '../catalogue.ts';

export const resultFact: FirstWords['resultFact'] = {
  uncertainty: 'Incertidumbre',
  coverage: (factor) => `± contiene el valor verdadero en 95 de cada 100 casos (k = ${factor})`,
  endCorrection: 'Corrección de extremo',
  endFrom: {
    measured: (mm, uncertaintyMm) => `${mm}\u00a0mm, medida; incertidumbre típica ${uncertaintyMm}\u00a0mm`,
    theory: (mm, uncertaintyMm) =>
      `${mm}\u00a0mm, según la teoría; incertidumbre típica ${uncertaintyMm}\u00a0mm`,
    assumed: (mm, uncertaintyMm) => `${mm}\u00a0mm, supuesta; incertidumbre típica ${uncertaintyMm}\u00a0mm`,
  },
  theory: 'Velocidad prevista',
  noTheory: 'anota la temperatura del aire para comparar',
  difference: 'Diferencia con la prevista',
  apart: (mps) => `${mps}\u00a0m/s, más de lo que explican las incertidumbres`,
  within: (mps) => `${mps}\u00a0m/s, dentro de las incertidumbres`,
};
