import { FRAME_S } from './sweepTrack.ts';
import type { SweepFrame, SweepGap } from './sweepTrack.ts';

/** Level at one frequency of the sweep. */
export interface SweepLevel {
  readonly frequencyHz: number;
  readonly meanSquare: number;
}

/** What was heard of one way of a sweep. */
export interface SweepCurve {
  /** By rising pitch. */
  readonly levels: readonly SweepLevel[];
  /** Frequencies that passed while sound was lost, and as far beside them as a frame reaches. */
  readonly holes: readonly { readonly fromHz: number; readonly toHz: number }[];
}

/** The tone counts from this power over the noise on: 9 dB. */
const HEARD = 8;
/** How far a frame may be from the sweep's line, Hz: a bin. */
const OFF_LINE_HZ = 6;
const FEWEST = 20;

/**
 * Level against frequency of a tone whose frequency moves steadily. When it began needn't be known: what lies on one line of
 * this slope is the sweep, everything else (the way back, talk, hum) is spread over many lines.
 * @param rateHzPerS  of the sweep, below 0 for a falling one, not 0
 * @param gaps  in the frames' time
 * @returns null where too little of a sweep was heard
 * @throws RangeError if the rate is 0
 * @example
 * const frames = Array.from({ length: 30 }, (_, i) => ({
 *   timeS: i / 10,
 *   frequencyHz: 300 + i,
 *   meanSquare: 0.5,
 *   noiseMeanSquare: 0.001,
 * }));
 * sweepCurve(frames, 10).levels.at(-1) // → { frequencyHz: 329, meanSquare: 0.5 }
 * sweepCurve(frames, -10) // → null
 */
export function sweepCurve(
  frames: readonly SweepFrame[],
  rateHzPerS: number,
  gaps: readonly SweepGap[] = [],
): SweepCurve | null {
  if (!(Math.abs(rateHzPerS) > 0)) throw new RangeError(`rateHzPerS must not be 0, got ${rateHzPerS}`);
  const clear = frames.filter((frame) => frame.meanSquare > HEARD * frame.noiseMeanSquare);
  const startOf = (frame: SweepFrame): number => frame.frequencyHz - rateHzPerS * frame.timeS;
  const startHz = commonValue(clear.map(startOf), OFF_LINE_HZ);
  if (startHz === null) return null;
  const levels = clear
    .filter((frame) => Math.abs(startOf(frame) - startHz) < OFF_LINE_HZ)
    .map((frame): SweepLevel => ({
      frequencyHz: startHz + rateHzPerS * frame.timeS,
      meanSquare: frame.meanSquare,
    }))
    .sort((one, other) => one.frequencyHz - other.frequencyHz);
  if (levels.length < FEWEST) return null;
  const holes = gaps.map(({ fromS, toS }) => {
    const ends = [fromS - FRAME_S, toS + FRAME_S].map((timeS) => startHz + rateHzPerS * timeS);
    return { fromHz: Math.min(...ends), toHz: Math.max(...ends) };
  });
  return { levels, holes };
}

/** Median of the values within the fullest window; null where there are none. */
function commonValue(values: readonly number[], halfWindow: number): number | null {
  const sorted = [...values].sort((a, b) => a - b);
  let [bestFrom, bestTo] = [0, 0];
  for (let from = 0, to = 0; from < sorted.length; from += 1) {
    while (to < sorted.length && sorted[to] <= sorted[from] + 2 * halfWindow) to += 1;
    if (to - from > bestTo - bestFrom) [bestFrom, bestTo] = [from, to];
  }
  return sorted[(bestFrom + bestTo) >> 1] ?? null;
}
