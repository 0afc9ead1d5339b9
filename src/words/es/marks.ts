import type { FirstWords } from '../catalogue.ts';
import { ordinal } from './grammar.ts';

export const markFacts: FirstWords['markFacts'] = {
  byHand: 'a mano',
  heard: (timeS, riseDb, percent) => `a los ${timeS} s · subida ${riseDb} dB · segura al ${percent} %`,
  between: (centimetres, uncertaintyCm) =>
    `en el medio: ${centimetres} cm, incertidumbre típica ${uncertaintyCm} cm`,
  order: (order) => ordinal(order),
  orderSet: (order) => `${ordinal(order)} (fijada a mano)`,
  orderSure: (order, percent) => `${ordinal(order)}, segura al ${percent} %`,
  fromFit: (millimetres) => `${millimetres} mm respecto al ajuste`,
};
