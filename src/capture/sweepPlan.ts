import { requireInRange } from '../air/requireInRange.ts';
import { LIMITS } from '../limits/limits.ts';

/** A tone that rises from one pitch to another and comes back, both at one rate. */
export interface SweepPlan {
  readonly fromHz: number;
  readonly toHz: number;
  readonly rateHzPerS: number;
}

/** @throws RangeError unless the pitches are forks' and rise, and the rate is 1..50 Hz/s */
export function checkSweepPlan({ fromHz, toHz, rateHzPerS }: SweepPlan): void {
  const { lowest, highest } = LIMITS.stampedHz;
  requireInRange('fromHz', fromHz, lowest, highest);
  requireInRange('toHz', toHz, lowest, highest);
  requireInRange('rateHzPerS', rateHzPerS, 1, 50);
  if (!(toHz > fromHz)) throw new RangeError(`toHz must be above ${fromHz}, got ${toHz}`);
}

/** Up and back, s. */
export function sweepDurationS({ fromHz, toHz, rateHzPerS }: SweepPlan): number {
  return (2 * (toHz - fromHz)) / rateHzPerS;
}

/** Pitch after a time; the first one before and after the sweep. */
export function sweepPitchHz(plan: SweepPlan, timeS: number): number {
  const { fromHz, toHz, rateHzPerS } = plan;
  const turnS = (toHz - fromHz) / rateHzPerS;
  return fromHz + rateHzPerS * Math.max(0, turnS - Math.abs(timeS - turnS));
}
