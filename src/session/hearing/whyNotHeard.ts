import { isWithin } from '../../limits/limits.ts';
import { hearableFrequencyHz, SAMPLE_RATES_HZ } from '../../tone/hearableFrequency.ts';

/** A rate at which every fork of the bench is heard, and which every device offers, Hz. */
const USUAL_RATE = '44 100 or 48 000';

/** Why a pitch can't be heard at a sample rate, and what to do, in whole sentences; null where it can. */
export function whyNotHeard(sampleRateHz: number, pitchHz: number): string | null {
  if (!isWithin(SAMPLE_RATES_HZ, sampleRateHz)) {
    const { lowest, highest } = SAMPLE_RATES_HZ;
    return `This sound has a sample rate of ${sampleRateHz} Hz; the bench hears ${lowest} to ${highest} Hz. Record at ${USUAL_RATE} Hz.`;
  }
  const { lowest, highest } = hearableFrequencyHz(sampleRateHz);
  if (isWithin({ lowest, highest }, pitchHz)) return null;
  return `A pitch of ${pitchHz} Hz can’t be heard at this sound’s sample rate of ${sampleRateHz} Hz: ${lowest} to ${Math.floor(highest)} Hz can. Record at ${USUAL_RATE} Hz (a headset’s microphone often gives less), or choose another pitch. Lengths can be typed all the same.`;
}
