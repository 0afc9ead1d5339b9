import type { FirstWords } from '../catalogue.ts';

export const resultFact: FirstWords['resultFact'] = {
  uncertainty: 'Niepewność',
  coverage: (factor) => `± obejmuje wartość prawdziwą w 95 na 100 przypadków (k\u00a0=\u00a0${factor})`,
  endCorrection: 'Poprawka na końcu rury',
  endFrom: {
    measured: (mm, uncertaintyMm) =>
      `${mm}\u00a0mm, zmierzona; niepewność standardowa ${uncertaintyMm}\u00a0mm`,
    theory: (mm, uncertaintyMm) => `${mm}\u00a0mm, z teorii; niepewność standardowa ${uncertaintyMm}\u00a0mm`,
    assumed: (mm, uncertaintyMm) =>
      `${mm}\u00a0mm, przyjęta; niepewność standardowa ${uncertaintyMm}\u00a0mm`,
  },
  theory: 'Prędkość przewidywana',
  noTheory: 'zanotuj temperaturę powietrza, żeby porównać',
  difference: 'Różnica względem przewidywania',
  apart: (mps) => `${mps}\u00a0m/s, więcej niż tłumaczą niepewności`,
  within: (mps) => `${mps}\u00a0m/s, w granicach niepewności`,
};
