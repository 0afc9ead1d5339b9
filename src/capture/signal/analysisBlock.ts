/**
 * Samples that the stages take at a time, 21 ms at 48 kHz: short against talk, long against a period of the lowest fork.
 * The checks of the signal, the broadband level and the decisions of listening all fall on multiples of it, whatever the
 * length of the blocks in which the sound comes.
 */
export const ANALYSIS_BLOCK = 1024;
