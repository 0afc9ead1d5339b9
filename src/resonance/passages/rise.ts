import { DB_PER_LN_POWER, ratioDb } from '../../tone/level.ts';
import type { PassageFeatures } from './passageFeatures.ts';

/** Rise over the fork alone, dB: peak against the mean power of before and after (at least the noise). */
export function riseDb(features: PassageFeatures): number {
  return ratioDb(features.peakPower, Math.max(features.sidePower, features.noisePower));
}

/** Rise over the room's noise in a band of 5 Hz, dB. */
export function aboveRoomDb(features: PassageFeatures, noiseIn5Hz: number): number {
  return ratioDb(features.peakPower, noiseIn5Hz + 1e-20);
}

/**
 * Standard uncertainty of the rise, dB: noise at the peak and beside it (a power of signal-to-noise R has a relative
 * error of √(2/R)), and 1 dB for the hand that holds the fork (common practice, no source).
 */
export function riseStandardUncertaintyDb(features: PassageFeatures): number {
  const peak = (2 * features.noisePower) / features.peakPower;
  const side = (2 * features.noisePower) / Math.max(features.sidePower, features.noisePower) / 4;
  return Math.hypot(1, DB_PER_LN_POWER * Math.sqrt(peak + side));
}
