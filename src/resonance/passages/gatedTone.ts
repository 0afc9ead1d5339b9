import type { ToneSeries } from '../../tone/toneSeries.ts';
import { medianNoise } from '../noiseFloor.ts';
import type { DetectedPassage } from './detectedPassage.ts';

/** Side-band frames that tell the room: 12 s. */
const ROOM_FRAMES = 150;
/**
 * Single values of noise fall this far below their median, a ratio of powers of 0.05 (13 dB), in one of 29 cases (1 − 2^−0.05),
 * each independent of the next but one; eight in a row fall so far only where the sound was gated away, for a dip beside
 * a resonance and a damped fork end at the room's noise.
 */
const BELOW_ROOM = 0.05;
const SILENT_S = 0.08;
/** What stands below the rounding to 16 bits whatever was before: some 1e-13 in a value (1/12 step² · 44 Hz / 24 kHz). */
const NO_SOUND = 1e-15;
/** What is so long before or after a passage's half-power moments, beside its own width, has no part in its shape, s. */
const AROUND_S = 0.3;

/**
 * Was the tone itself gated away within a passage, so that its shape is the gate's and not the column's? A gain that
 * moves, and noise that is taken from around the tone, are no gate.
 * @param series  heard as far as the flag was decided on
 */
export function isGatedAway(
  series: ToneSeries,
  { halfPowerStartS, halfPowerEndS }: Pick<DetectedPassage, 'halfPowerStartS' | 'halfPowerEndS'>,
): boolean {
  const { rateHz, re, im, length } = series;
  const aroundS = halfPowerEndS - halfPowerStartS + AROUND_S;
  const from = Math.max(0, Math.floor((halfPowerStartS - aroundS) * rateHz));
  const to = Math.min(length, Math.ceil((halfPowerEndS + aroundS) * rateHz));
  const silent = Math.max(NO_SOUND, BELOW_ROOM * medianNoise(series, ROOM_FRAMES));
  const least = Math.round(SILENT_S * rateHz);
  let run = 0;
  for (let k = from; k < to; k += 1) {
    run = re[k] * re[k] + im[k] * im[k] < silent ? run + 1 : 0;
    if (run >= least) return true;
  }
  return false;
}
