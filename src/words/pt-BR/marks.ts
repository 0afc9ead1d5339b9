import type { FirstWords } from '../catalogue.ts';
import { ordinal } from './grammar.ts';

export const markFacts: FirstWords['markFacts'] = {
  byHand: 'à mão',
  heard: (timeS, riseDb, percent) => `em ${timeS} s · aumento ${riseDb} dB · ${percent} % de certeza`,
  between: (centimetres, uncertaintyCm) => `no meio: ${centimetres} cm, incerteza-padrão ${uncertaintyCm} cm`,
  order: (order) => ordinal(order),
  orderSet: (order) => `${ordinal(order)} (fixada à mão)`,
  orderSure: (order, percent) => `${ordinal(order)}, ${percent} % de certeza`,
  fromFit: (millimetres) => `${millimetres} mm em relação ao ajuste`,
};
