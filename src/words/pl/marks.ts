import type { FirstWords } from '../catalogue.ts';

export const markFacts: FirstWords['markFacts'] = {
  byHand: 'ręcznie',
  heard: (timeS, riseDb, percent) => `w ${timeS} s · wzrost ${riseDb} dB · pewność ${percent} %`,
  between: (centimetres, uncertaintyCm) =>
    `w środku: ${centimetres} cm, niepewność standardowa ${uncertaintyCm} cm`,
  order: (order) => `rząd ${order}`,
  orderSet: (order) => `rząd ${order} (ustawiony ręcznie)`,
  orderSure: (order, percent) => `rząd ${order}, pewność ${percent} %`,
  fromFit: (millimetres) => `${millimetres} mm od dopasowania`,
};
