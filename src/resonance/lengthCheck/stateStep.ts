import type { MouthStep } from './stepLikelihood.ts';
import type { ToneStay } from './forkDwells.ts';
import { stepLine } from './stepLine.ts';

/** Least comings and goings that are compared: there and back, and once more. */
const LEAST_COMPARISONS = 3;

/** The step between the two places, from the stays. @returns null for fewer than three changes */
export function mouthStep(stays: readonly ToneStay[]): MouthStep | null {
  if (stays.length <= LEAST_COMPARISONS) return null;
  const level = stepBetween(stays, (stay) => stay.levelNp, 0.12);
  const phase = stepBetween(stays, (stay) => stay.phaseRad, 0.15);
  if (level === null || phase === null) return null;
  return {
    riseNp: level.step,
    riseUncertaintyNp: level.uncertainty,
    phaseRad: phase.step,
    phaseUncertaintyRad: phase.uncertainty,
  };
}

/**
 * Line in time and step between the places by least squares, each stay counted once.
 * @param usual  scatter of stays that a hand makes, counted like four more of them: few stays tell little of their own
 */
function stepBetween(
  stays: readonly ToneStay[],
  of: (stay: ToneStay) => number,
  usual: number,
): { step: number; uncertainty: number } | null {
  const n = stays.length;
  const line = stepLine(stays.map((stay) => [1, stay.timeS, Number(stay.isSecond), of(stay)]));
  if (line === null) return null;
  const [base, slope, step] = line;
  let [squares, noise, t, s] = [0, 0, 0, 0];
  for (const stay of stays) {
    const second = Number(stay.isSecond);
    squares += (of(stay) - base - slope * stay.timeS - step * second) ** 2;
    noise += stay.noiseVariance / n;
    t += stay.timeS / n;
    s += second / n;
  }
  let [tt, ts, ss] = [0, 0, 0];
  for (const stay of stays) {
    const second = Number(stay.isSecond);
    tt += (stay.timeS - t) ** 2;
    ts += (stay.timeS - t) * (second - s);
    ss += (second - s) ** 2;
  }
  const variance = (squares + 4 * usual * usual) / (n + 1) + noise;
  return { step, uncertainty: Math.sqrt((variance * tt) / (tt * ss - ts * ts)) };
}
