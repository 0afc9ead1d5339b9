import type { FirstWords } from '../catalogue.ts';

export const resultFact: FirstWords['resultFact'] = {
  uncertainty: 'Niepewność',
  coverage: (factor) => `± obejmuje wartość prawdziwą w 95 na 100 przypadków (k\u00a0=\u00a0${factor})`,
  endCorrection: 'Poprawka na końcu rury',
  endFrom: {
    measured: (mm, uncertaintyMm) => `${mm} mm, zmierzona; niepewność standardowa ${uncertaintyMm} mm`,
    theory: (mm, uncertaintyMm) => `${mm} mm, z teorii; niepewność standardowa ${uncertaintyMm} mm`,
    assumed: (mm, uncertaintyMm) => `${mm} mm, przyjęta; niepewność standardowa ${uncertaintyMm} mm`,
  },
  theory: 'Prędkość przewidywana',
  noTheory: 'zanotuj temperaturę powietrza, żeby porównać',
  difference: 'Różnica względem przewidywania',
  apart: (mps) => `${mps} m/s, więcej niż tłumaczą niepewności`,
  within: (mps) => `${mps} m/s, w granicach niepewności`,
};
