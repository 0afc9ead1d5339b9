import type { FirstWords } from '../catalogue.ts';

export const markFacts: FirstWords['markFacts'] = {
  byHand: 'à la main',
  heard: (timeS, riseDb, percent) => `à ${timeS} s · hausse ${riseDb} dB · sûr à ${percent} %`,
  between: (centimetres, uncertaintyCm) =>
    `au milieu\u00a0: ${centimetres} cm, incertitude-type ${uncertaintyCm} cm`,
  order: (order) => `ordre ${order}`,
  orderSet: (order) => `ordre ${order} (fixé à la main)`,
  orderSure: (order, percent) => `ordre ${order}, sûr à ${percent} %`,
  fromFit: (millimetres) => `à ${millimetres} mm de l’ajustement`,
};
