import { FrequencyEstimator } from '../../tone/frequencyEstimator.ts';
import type { ToneSeries } from '../../tone/toneSeries.ts';
import { medianNoise } from '../noiseFloor.ts';
import { findSoundings } from '../soundings.ts';
import { meanPower } from '../tonePower.ts';
import { viewOf } from '../toneView.ts';
import type { ToneView } from '../toneView.ts';
import { findDwells } from './forkDwells.ts';
import type { ForkDwells } from './forkDwells.ts';

/** Stretches of tone this close together belong together: a talker may cover the fork. */
const LONGEST_COVER_S = 2.5;
/** Most change of power from before a cover to after it: 12 dB. */
const MOST_CHANGE = 16;

/** The longest sounding of a series, taken as a fork that comes and goes. */
export interface LongestDwells {
  readonly fork: ForkDwells;
  readonly durationS: number;
}

/**
 * @param rangeHz  how far the fork may be off the frequency moved to 0 Hz
 * @returns null where no fork sounds for 2 s, or where sound was lost in it
 */
export function longestDwells(series: ToneSeries, rangeHz: number): LongestDwells | null {
  const all = series.segment(0, series.length);
  const frequency = new FrequencyEstimator(rangeHz).estimate(all, medianNoise(series));
  if (frequency === null) return null;
  const view = viewOf(series, 0, series.length, frequency.offsetHz);
  const longest = longestStretch(view);
  if (longest === null || series.hasGap(longest.from, longest.to)) return null;
  const fork = findDwells(view, longest.from, longest.to);
  return fork === null ? null : { fork, durationS: (longest.to - longest.from) / series.rateHz };
}

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** The longest of a view's soundings, those joined between which a voice may have drowned the fork. */
function longestStretch(view: ToneView): Stretch | null {
  let longest: Stretch | null = null;
  let present: Stretch | null = null;
  for (const { from, to } of findSoundings(view)) {
    present =
      present !== null && isCovered(view, present.to, from) ? { from: present.from, to } : { from, to };
    if (longest === null || present.to - present.from > longest.to - longest.from) longest = present;
  }
  return longest;
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
