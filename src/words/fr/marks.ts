import type { FirstWords } from '../catalogue.ts';

export const markFacts: FirstWords['markFacts'] = {
  byHand: 'à la main',
  heard: (timeS, riseDb, percent) => `à ${timeS}\u00a0s · hausse ${riseDb}\u00a0dB · sûr à ${percent}\u00a0%`,
  between: (centimetres, uncertaintyCm) =>
    `au milieu\u00a0: ${centimetres}\u00a0cm, incertitude-type ${uncertaintyCm}\u00a0cm`,
  order: (order) => `ordre ${order}`,
  orderSet: (order) => `ordre ${order} (fixé à la main)`,
  orderSure: (order, percent) => `ordre ${order}, sûr à ${percent}\u00a0%`,
  fromFit: (millimetres) => `écart à l’ajustement\u00a0: ${millimetres}\u00a0mm`,
};
