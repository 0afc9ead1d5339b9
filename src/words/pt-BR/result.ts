import type { FirstWords } from '../catalogue.ts';

export const resultFact: FirstWords['resultFact'] = {
  uncertainty: 'Incerteza',
  coverage: (factor) => `± cobre o valor verdadeiro em 95 de 100 casos (k = ${factor})`,
  endCorrection: 'Correção de extremidade',
  endFrom: {
    measured: (mm, uncertaintyMm) => `${mm}\u00a0mm, medida; incerteza-padrão ${uncertaintyMm}\u00a0mm`,
    theory: (mm, uncertaintyMm) => `${mm}\u00a0mm, da teoria; incerteza-padrão ${uncertaintyMm}\u00a0mm`,
    assumed: (mm, uncertaintyMm) => `${mm}\u00a0mm, suposta; incerteza-padrão ${uncertaintyMm}\u00a0mm`,
  },
  theory: 'Velocidade prevista',
  noTheory: 'anote a temperatura do ar para comparar',
  difference: 'Diferença em relação à prevista',
  apart: (mps) => `${mps}\u00a0m/s, mais do que as incertezas explicam`,
  within: (mps) => `${mps}\u00a0m/s, dentro das incertezas`,
};
