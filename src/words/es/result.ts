import type { FirstWords } from '../catalogue.ts';

export const resultFact: FirstWords['resultFact'] = {
  uncertainty: 'Incertidumbre',
  coverage: (factor) => `± contiene el valor verdadero en 95 de cada 100 casos (k = ${factor})`,
  endCorrection: 'Corrección de extremo',
  endFrom: {
    measured: (mm, uncertaintyMm) => `${mm} mm, medida; incertidumbre típica ${uncertaintyMm} mm`,
    theory: (mm, uncertaintyMm) => `${mm} mm, según la teoría; incertidumbre típica ${uncertaintyMm} mm`,
    assumed: (mm, uncertaintyMm) => `${mm} mm, supuesta; incertidumbre típica ${uncertaintyMm} mm`,
  },
  theory: 'Velocidad prevista',
  noTheory: 'anota la temperatura del aire para comparar',
  difference: 'Diferencia con la prevista',
  apart: (mps) => `${mps} m/s, más de lo que explican las incertidumbres`,
  within: (mps) => `${mps} m/s, dentro de las incertidumbres`,
};
