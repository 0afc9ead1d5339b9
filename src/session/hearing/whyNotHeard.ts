import type { UnheardPitch } from '../../capture/soundSource.ts';
import { isWithin } from '../../limits/limits.ts';
import { hearableFrequencyHz, SAMPLE_RATES_HZ } from '../../tone/hearableFrequency.ts';

/** Why a pitch can't be heard at a sample rate; null where it can. */
export function whyNotHeard(sampleRateHz: number, pitchHz: number): UnheardPitch | null {
  if (!isWithin(SAMPLE_RATES_HZ, sampleRateHz)) {
    const { lowest, highest } = SAMPLE_RATES_HZ;
    return { unheard: 'sample-rate', sampleRateHz, lowestHz: lowest, highestHz: highest };
  }
  const { lowest, highest } = hearableFrequencyHz(sampleRateHz);
  if (isWithin({ lowest, highest }, pitchHz)) return null;
  return { unheard: 'pitch', pitchHz, sampleRateHz, lowestHz: lowest, highestHz: highest };
}
