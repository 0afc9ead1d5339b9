/** A press slides the column by so much, and in fine steps by so much: a centre is told to tenths of a millimetre. */
export const STEP_M = 0.001;
export const FINE_STEP_M = 0.0002;
