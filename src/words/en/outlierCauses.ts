import type { RuleSlipM } from '../../solver/outlierCause.ts';

/** What may have gone wrong with a mark that doesn't fit. */
export const outlierCause = {
  setOrder: (setOrder: number, fittingOrder: number) =>
    `Order ${setOrder} was set, but the length fits order ${fittingOrder}.`,
  /** What was off, and by how much; the likely causes follow it. */
  tooLong: (centimetres: string, causes: string) => `${centimetres} cm too long: ${causes}`,
  tooShort: (centimetres: string, causes: string) => `${centimetres} cm too short: ${causes}`,
  unknown: 'read it again, or look for the resonance again.',
  or: ' Or ',
  misread: {
    0.01: 'misread by 1 cm?',
    0.05: 'misread by 5 cm?',
    0.1: 'misread by 10 cm?',
    0.2: 'misread by 20 cm?',
    0.5: 'misread by half a metre?',
    1: 'misread by a metre?',
  } satisfies Readonly<Record<RuleSlipM, string>>,
  swappedDigits: 'two digits swapped?',
  slippedPoint: 'decimal point in the wrong place?',
  otherColumn: {
    closed: (order: number) => `it fits as order ${order} of a closed column.`,
    open: (order: number) => `it fits as order ${order} of an open column.`,
  },
  otherFork: (order: number, hertz: string) =>
    `it fits as order ${order} of the ${hertz} Hz fork: was it that fork?`,
};
