import { ordinal } from './grammar.ts';

/** What is said of one mark beside its length. Numbers come as they are shown. */
export const markFacts = {
  byHand: 'by hand',
  heard: (timeS: string, riseDb: string, percent: string) =>
    `at ${timeS} s · rise ${riseDb} dB · ${percent} % sure`,
  /** Of a length that lies between two that were typed. */
  between: (centimetres: string, uncertaintyCm: string) =>
    `in the middle: ${centimetres} cm, standard uncertainty ${uncertaintyCm} cm`,
  order: (order: number) => ordinal(order),
  orderSet: (order: number) => `${ordinal(order)} (set by hand)`,
  orderSure: (order: number, percent: string) => `${ordinal(order)}, ${percent} % sure`,
  fromFit: (millimetres: string) => `${millimetres} mm from the fit`,
};
