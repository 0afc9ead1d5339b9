import { smoothedPhasor, smoothedPower } from '../tonePower.ts';
import type { ToneView } from '../toneView.ts';
import { smoothingHalf } from './passageFeatures.ts';
import type { PassageFeatures } from './passageFeatures.ts';

/** How a flagged passage went, for the person who reads its evidence. */
export interface PassageMeasures {
  /** Half-power moments around the peak, indices into the view. */
  readonly halfPowerStart: number;
  readonly halfPowerEnd: number;
  /** Full swing of the tone's angle within two half widths, rad. */
  readonly phaseSwingRad: number;
}

/** Half-power moments lie at most so far from the peak, s. */
const REACH_S = 3;

export function measurePassage(view: ToneView, features: PassageFeatures): PassageMeasures {
  const w = Math.exp(features.logHalfWidth) * view.rateHz;
  const half = smoothingHalf(w);
  return {
    halfPowerStart: halfPowerMoment(view, features, half, -1),
    halfPowerEnd: halfPowerMoment(view, features, half, 1),
    phaseSwingRad: phaseSwing(
      view,
      Math.round(features.middle - 2 * w),
      Math.round(features.middle + 2 * w),
      half,
    ),
  };
}

/** Where the smoothed power falls to half the peak's on one side. */
function halfPowerMoment(
  view: ToneView,
  { peakIndex, peakPower }: PassageFeatures,
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
  const from = Math.max(0, fromIndex);
  let previous = smoothedPhasor(view, from, half);
  const step = Math.max(1, half >> 1);
  for (let k = from + step; k <= Math.min(view.length - 1, toIndex); k += step) {
    const here = smoothedPhasor(view, k, half);
    angle += Math.atan2(
      previous.re * here.im - previous.im * here.re,
      previous.re * here.re + previous.im * here.im,
    );
    low = Math.min(low, angle);
    high = Math.max(high, angle);
    previous = here;
  }
  return high - low;
}
