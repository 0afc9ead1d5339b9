import type { FirstWords } from '../catalogue.ts';
import { ordinal } from './grammar.ts';

export const markFacts: FirstWords['markFacts'] = {
  byHand: 'a mano',
  heard: (timeS, riseDb, percent) =>
    `a los ${timeS}\u00a0s · subida ${riseDb}\u00a0dB · segura al ${percent}\u00a0%`,
  between: (centimetres, uncertaintyCm) =>
    `en el medio: ${centimetres}\u00a0cm, incertidumbre típica ${uncertaintyCm}\u00a0cm`,
  order: (order) => ordinal(order),
  orderSet: (order) => `${ordinal(order)} (fijada a mano)`,
  orderSure: (order, percent) => `${ordinal(order)}, segura al ${percent}\u00a0%`,
  fromFit: (millimetres) => `${millimetres}\u00a0mm respecto al ajuste`,
};
