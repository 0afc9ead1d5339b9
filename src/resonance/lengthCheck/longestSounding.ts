import { estimatePitch } from '../../tone/frequencyEstimator.ts';
import type { ToneSeries } from '../../tone/toneSeries.ts';
import { findComings } from './forkDwells.ts';
import type { ForkComings } from './forkDwells.ts';
import { typicalNoise } from '../passages/offlineDetector.ts';
import { findSoundings, FoundSoundings } from '../soundings.ts';
import { meanPower, viewOf } from '../toneView.ts';
import type { ToneView } from '../toneView.ts';

/** Stretches of tone this close together belong together: a talker may cover the fork. */
const LONGEST_COVER_S = 2.5;
/** Most change of power from before a cover to after it: 12 dB. */
const MOST_CHANGE = 16;

/**
 * The longest sounding of a series, taken as a fork that comes and goes.
 * @param rangeHz  how far the fork may be off the frequency moved to 0 Hz
 * @returns null where no fork sounds for 2 s, or where sound was lost in it
 */
export function longestComings(
  series: ToneSeries,
  rangeHz: number,
): { comings: ForkComings; durationS: number } | null {
  const noise = typicalNoise(series);
  const pitch = estimatePitch(series.re, series.im, 0, series.length, series.rateHz, rangeHz, noise);
  if (pitch === null) return null;
  const view = viewOf(series, 0, series.length, pitch.offsetHz);
  let longest: Stretch | null = null;
  let present: Stretch | null = null;
  const found = new FoundSoundings();
  findSoundings(view, found);
  for (const { from, to } of found.spans) {
    present =
      present !== null && isCovered(view, present.to, from) ? { from: present.from, to } : { from, to };
    if (longest === null || present.to - present.from > longest.to - longest.from) longest = present;
  }
  if (longest === null || series.hasGap(longest.from, longest.to)) return null;
  const comings = findComings(view, longest.from, longest.to);
  return comings === null ? null : { comings, durationS: (longest.to - longest.from) / series.rateHz };
}

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Can the fork have gone on sounding from one index to the other, drowned by a voice? */
function isCovered(view: ToneView, from: number, to: number): boolean {
  const gap = to - from;
  if (gap <= 1 || gap > LONGEST_COVER_S * view.rateHz) return false;
  const around = Math.round(0.3 * view.rateHz);
  const before = meanPower(view, from - around, from);
  const after = meanPower(view, to, to + around);
  // A voice before the strike or after the damping is something else.
  if (Math.max(before, after) > MOST_CHANGE * Math.min(before, after)) return false;
  let noise = 0;
  for (let k = from; k < to; k += 1) noise += (view.noiseDensity[k] * view.bandwidthHz) / gap;
  return noise > 0.3 * Math.min(before, after);
}
