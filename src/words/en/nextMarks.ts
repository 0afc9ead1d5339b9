import { ordinal } from './grammar.ts';

/** A mark that would make the result more certain. */
export const nextMark = {
  resonance: {
    closed: (order: number, hertz: string) => `${ordinal(order)} resonance, ${hertz} Hz fork, closed column`,
    open: (order: number, hertz: string) => `${ordinal(order)} resonance, ${hertz} Hz fork, open column`,
  },
  near: (resonance: string, cm: string) => `${resonance}, near ${cm} cm`,
  again: (resonance: string) => `${resonance} (read it again)`,
  gain: (percent: string) => `Uncertainty: ${percent} % less.`,
  left: (mps: string) => `Standard uncertainty then: ${mps} m/s.`,
  hint: (resonance: string, percent: string) =>
    `Best next: ${resonance}. It would cut the uncertainty by ${percent} %.`,
};
