import { DB_PER_LN_POWER } from '../../tone/level.ts';
import type { Guidance, Resonance, Sounding } from './listeningTypes.ts';

/** Of a sounding's flagged passages those within this of the strongest may show the way back, dB. */
const EQUAL_DB = 4;
/** A flag's own maximum is looked for from this long before it on, s: a level point spans 0.2 s. */
const BEFORE_S = 0.1;

/** A level point of the present sounding. */
interface TonePoint {
  readonly timeS: number;
  /** ln of the tone's mean square. */
  readonly logPower: number;
}

/** How far the level is under the best of the present sounding, the fork's dying taken out. */
export class LevelBelowMaximum {
  /** Of the present sounding, in order of time. */
  readonly #points: TonePoint[] = [];

  /** Begins anew: another sounding. */
  clear(): void {
    this.#points.length = 0;
  }

  /** @param meanSquare  of the tone averaged in phase, > 0 */
  push(timeS: number, meanSquare: number): void {
    this.#points.push({ timeS, logPower: Math.log(meanSquare) });
  }

  /**
   * @param flagged  what was flagged so far, in order of time
   * @param present  the sounding that goes on: what was flagged before it doesn't count
   * @param decayTimeS  time in which the fork's amplitude falls to 1/e; null where not known yet
   * @returns null where nothing was flagged yet
   */
  guide(flagged: readonly Resonance[], present: Sounding, decayTimeS: number | null): Guidance | null {
    const points = this.#points;
    const own = flagged.slice(flagged.findLastIndex(({ timeS }) => timeS < present.startS) + 1);
    const now = points.at(-1);
    if (now === undefined || own.length === 0) return null;
    const dyingPerS = decayTimeS === null ? 0 : 2 / decayTimeS;
    /** Log level as if the fork did not die, up to a constant. */
    const undying = ({ timeS, logPower }: TonePoint): number => logPower + dyingPerS * timeS;
    const levels = own.map((resonance) => undying(this.#pointAt(resonance)));
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
    let highest = -Infinity;
    for (let i = points.length - 1; i >= 0 && points[i].timeS >= bestTimeS - BEFORE_S; i -= 1) {
      highest = Math.max(highest, undying(points[i]));
    }
    return { belowBestDb: Math.min(0, DB_PER_LN_POWER * (undying(now) - highest)), bestTimeS };
  }

  /** The newest point that isn't later than a resonance; the first one where all are. */
  #pointAt({ timeS }: Resonance): TonePoint {
    return this.#points.findLast((point) => point.timeS <= timeS) ?? this.#points[0];
  }
}
