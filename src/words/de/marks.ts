import type { FirstWords } from '../catalogue.ts';
import { ordinal } from './grammar.ts';

export const markFacts: FirstWords['markFacts'] = {
  byHand: 'von Hand',
  heard: (timeS, riseDb, percent) => `bei ${timeS} s · Anstieg ${riseDb} dB · zu ${percent} % sicher`,
  between: (centimetres, uncertaintyCm) =>
    `Mitte: ${centimetres} cm, Standardunsicherheit ${uncertaintyCm} cm`,
  order: (order) => `${ordinal(order)} Ordnung`,
  orderSet: (order) => `${ordinal(order)} Ordnung (von Hand festgelegt)`,
  orderSure: (order, percent) => `${ordinal(order)} Ordnung, zu ${percent} % sicher`,
  fromFit: (millimetres) => `Abweichung ${millimetres} mm`,
};
