import type { FirstWords } from '../catalogue.ts';
import { ordinal } from './grammar.ts';

export const markFacts: FirstWords['markFacts'] = {
  byHand: 'à mão',
  heard: (timeS, riseDb, percent) =>
    `em ${timeS}\u00a0s · aumento ${riseDb}\u00a0dB · ${percent}\u00a0% de certeza`,
  between: (centimetres, uncertaintyCm) =>
    `no meio: ${centimetres}\u00a0cm, incerteza-padrão ${uncertaintyCm}\u00a0cm`,
  order: (order) => ordinal(order),
  orderSet: (order) => `${ordinal(order)} (fixada à mão)`,
  orderSure: (order, percent) => `${ordinal(order)}, ${percent}\u00a0% de certeza`,
  fromFit: (millimetres) => `${millimetres}\u00a0mm em relação ao ajuste`,
};
