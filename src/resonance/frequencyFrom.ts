/** Soundings shorter than this, s, say nothing of the fork: a voice can hold a pitch as long. */
export const FREQUENCY_FROM_S = 2;
