import type { FirstWords } from '../catalogue.ts';

export const markFacts: FirstWords['markFacts'] = {
  byHand: 'ręcznie',
  heard: (timeS, riseDb, percent) =>
    `w ${timeS}\u00a0s · wzrost ${riseDb}\u00a0dB · pewność ${percent}\u00a0%`,
  between: (centimetres, uncertaintyCm) =>
    `w środku: ${centimetres}\u00a0cm, niepewność standardowa ${uncertaintyCm}\u00a0cm`,
  order: (order) => `rząd ${order}`,
  orderSet: (order) => `rząd ${order} (ustawiony ręcznie)`,
  orderSure: (order, percent) => `rząd ${order}, pewność ${percent}\u00a0%`,
  fromFit: (millimetres) => `${millimetres}\u00a0mm od dopasowania`,
};
