import type { FirstWords } from '../catalogue.ts';
import { ordinal } from './grammar.ts';

export const markFacts: FirstWords['markFacts'] = {
  byHand: 'von Hand',
  heard: (timeS, riseDb, percent) =>
    `bei ${timeS}\u00a0s · Anstieg ${riseDb}\u00a0dB · zu ${percent}\u00a0% sicher`,
  between: (centimetres, uncertaintyCm) =>
    `Mitte: ${centimetres}\u00a0cm, Standardunsicherheit ${uncertaintyCm}\u00a0cm`,
  order: (order) => `${ordinal(order)} Ordnung`,
  orderSet: (order) => `${ordinal(order)} Ordnung (von Hand festgelegt)`,
  orderSure: (order, percent) => `${ordinal(order)} Ordnung, zu ${percent}\u00a0% sicher`,
  fromFit: (millimetres) => `Abweichung ${millimetres}\u00a0mm`,
};
