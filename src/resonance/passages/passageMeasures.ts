import { smoothed, smoothingHalf } from './passageFeatures.ts';
import type { PassageEvidence } from './passageFeatures.ts';
import { smoothedPower } from '../toneView.ts';
import type { ToneView } from '../toneView.ts';

/** How a flagged passage went, for the person who reads its evidence. */
export interface PassageCourse {
  /** Half-power moments around the peak, indices into the view. */
  readonly halfPowerStart: number;
  readonly halfPowerEnd: number;
  /** Full swing of the tone's angle within two half widths, rad. */
  readonly phaseSwingRad: number;
}

/** Half-power moments lie at most so far from the peak, s. */
const REACH_S = 3;

export function passageCourse(view: ToneView, evidence: PassageEvidence): PassageCourse {
  const w = Math.exp(evidence.width) * view.rateHz;
  const half = smoothingHalf(w);
  return {
    halfPowerStart: halfPowerMoment(view, evidence, half, -1),
    halfPowerEnd: halfPowerMoment(view, evidence, half, 1),
    phaseSwingRad: phaseSwing(
      view,
      Math.round(evidence.middle - 2 * w),
      Math.round(evidence.middle + 2 * w),
      half,
    ),
  };
}

/** Where the smoothed power falls to half the peak's on one side. */
function halfPowerMoment(
  view: ToneView,
  { peakIndex, peakPower }: PassageEvidence,
  half: number,
  way: 1 | -1,
): number {
  const reach = Math.round(REACH_S * view.rateHz);
  const end = Math.max(0, Math.min(view.length - 1, peakIndex + way * reach));
  let k = peakIndex;
  while (k !== end && smoothedPower(view, k, half) > peakPower / 2) k += way;
  return k;
}

/** Full swing of the angle of the smoothed phasor, followed without jumps. */
function phaseSwing(view: ToneView, fromIndex: number, toIndex: number, half: number): number {
  let [angle, low, high] = [0, 0, 0];
  let previousX = 0;
  let previousY = 0;
  const from = Math.max(0, fromIndex);
  for (let k = from; k <= Math.min(view.length - 1, toIndex); k += Math.max(1, half >> 1)) {
    const x = smoothed(view, view.sums.re, k, half);
    const y = smoothed(view, view.sums.im, k, half);
    if (k > from) {
      angle += Math.atan2(previousX * y - previousY * x, previousX * x + previousY * y);
      low = Math.min(low, angle);
      high = Math.max(high, angle);
    }
    previousX = x;
    previousY = y;
  }
  return high - low;
}
