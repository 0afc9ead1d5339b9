import { DB_PER_LN_POWER } from '../../tone/level.ts';
import type { Guidance, Resonance, Sounding } from './listeningTypes.ts';

/** Of a sounding's flagged passages those within this of the strongest may show the way back, dB. */
const EQUAL_DB = 4;
/** A flag's own maximum is looked for from this long before it on, s: a level point spans 0.2 s. */
const BEFORE_S = 0.1;

/** A maximum is one where the level falls by so much on its far side, and comes within so much of the highest, dB. */
const FALL_DB = 1.5;
const SAME_DB = 1.5;
/** Where the fork has died by more since, its dying isn't known well enough to find the maximum again, dB. */
const MOST_CORRECTED_DB = 6;

/** A level point of the present sounding. */
interface TonePoint {
  readonly timeS: number;
  /** ln of the tone's mean square. */
  readonly logPower: number;
}

/** How far the level is under the best of the present sounding, the fork's dying taken out. */
export class LevelBelowMaximum {
  /** Of the present sounding, in order of time. */
  private readonly points: TonePoint[] = [];

  /** Begins anew: another sounding. */
  clear(): void {
    this.points.length = 0;
  }

  /** @param meanSquare  of the tone averaged in phase, > 0 */
  push(timeS: number, meanSquare: number): void {
    this.points.push({ timeS, logPower: Math.log(meanSquare) });
  }

  /**
   * @param flagged  what was flagged so far, in order of time
   * @param present  the sounding that goes on: what was flagged before it doesn't count
   * @param decayTimeS  time in which the fork's amplitude falls to 1/e; null where not known yet
   * @returns null where nothing was flagged yet
   */
  guide(flagged: readonly Resonance[], present: Sounding, decayTimeS: number | null): Guidance | null {
    const points = this.points;
    const own = flagged.slice(flagged.findLastIndex(({ timeS }) => timeS < present.startS) + 1);
    const now = points.at(-1);
    if (now === undefined || own.length === 0) return null;
    const dyingPerS = decayTimeS === null ? 0 : 2 / decayTimeS;
    /** Log level as if the fork did not die, up to a constant. */
    const undying = ({ timeS, logPower }: TonePoint): number => logPower + dyingPerS * timeS;
    const levels = own.map((resonance) => undying(this.pointAt(resonance)));
    // The latest of the strongest: the less the fork has died since, the less is left to correct.
    const least = Math.max(...levels) - EQUAL_DB / DB_PER_LN_POWER;
    const bestTimeS =
      own[
        Math.max(
          0,
          levels.findLastIndex((level) => level > least),
        )
      ].timeS;
    // A slow way back may climb higher than the passage that was flagged on the fly.
    let first = points.length;
    let highest = -Infinity;
    for (; first > 0 && points[first - 1].timeS >= bestTimeS - BEFORE_S; first -= 1) {
      highest = Math.max(highest, undying(points[first - 1]));
    }
    const belowBestDb = Math.min(0, DB_PER_LN_POWER * (undying(now) - highest));
    const correctedDb = DB_PER_LN_POWER * dyingPerS * (now.timeS - bestTimeS);
    const isMetFromBothSides =
      correctedDb < MOST_CORRECTED_DB && maximaOf(points, first, undying, highest) >= 2;
    return { belowBestDb, bestTimeS, isMetFromBothSides };
  }

  /** The newest point that isn't later than a resonance; the first one where all are. */
  private pointAt({ timeS }: Resonance): TonePoint {
    const points = this.points;
    let index = points.length - 1;
    while (index > 0 && points[index].timeS > timeS) index -= 1;
    return points[index];
  }
}

/**
 * How many times the level went over its highest value.
 * @param first  index of the first point that counts
 * @param highest  of all that count, ln of a mean square
 */
function maximaOf(
  points: readonly TonePoint[],
  first: number,
  levelOf: (point: TonePoint) => number,
  highest: number,
): number {
  const fall = FALL_DB / DB_PER_LN_POWER;
  const least = highest - SAME_DB / DB_PER_LN_POWER;
  let count = 0;
  let isRising = true;
  let top = -Infinity;
  let bottom = Infinity;
  for (let i = first; i < points.length; i += 1) {
    const level = levelOf(points[i]);
    top = Math.max(top, level);
    bottom = Math.min(bottom, level);
    if (isRising && level < top - fall) {
      if (top >= least) count += 1;
      isRising = false;
      bottom = level;
    } else if (!isRising && level > bottom + fall) {
      isRising = true;
      top = level;
    }
  }
  return count;
}
