/** Sample rates that the tone stage works at. */
export const SAMPLE_RATES_HZ = { lowest: 8000, highest: 384_000 } as const;
/** Below it the side bands would be the fork's own mirror image and mains hum. */
const LOWEST_HZ = 60;
/** Of the sample rate: above it a recorder's own filter and the fold-over of the spectrum spoil the side bands. */
const HIGHEST_SHARE = 0.42;

/**
 * Frequencies that the tone stage hears at a sample rate, Hz.
 * @example
 * hearableFrequencyHz(48_000) // → { lowest: 60, highest: 20160 }
 */
export function hearableFrequencyHz(sampleRateHz: number): {
  readonly lowest: number;
  readonly highest: number;
} {
  return { lowest: LOWEST_HZ, highest: HIGHEST_SHARE * sampleRateHz };
}
