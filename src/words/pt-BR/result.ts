import type { FirstWords } from '../catalogue.ts';

export const resultFact: FirstWords['resultFact'] = {
  uncertainty: 'Incerteza',
  coverage: (factor) => `± cobre o valor verdadeiro em 95 de 100 casos (k = ${factor})`,
  endCorrection: 'Correção de extremidade',
  endFrom: {
    measured: (mm, uncertaintyMm) => `${mm} mm, medida; incerteza-padrão ${uncertaintyMm} mm`,
    theory: (mm, uncertaintyMm) => `${mm} mm, da teoria; incerteza-padrão ${uncertaintyMm} mm`,
    assumed: (mm, uncertaintyMm) => `${mm} mm, suposta; incerteza-padrão ${uncertaintyMm} mm`,
  },
  theory: 'Velocidade prevista',
  noTheory: 'anote a temperatura do ar para comparar',
  difference: 'Diferença em relação à prevista',
  apart: (mps) => `${mps} m/s, mais do que as incertezas explicam`,
  within: (mps) => `${mps} m/s, dentro das incertezas`,
};
