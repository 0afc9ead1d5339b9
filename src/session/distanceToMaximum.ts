import { DB_PER_LN_POWER } from '../tone/level.ts';
import type { Guidance, Resonance, Sounding } from './listeningTypes.ts';

/** Of a sounding's flagged passages those within this of the strongest may show the way back, dB. */
const EQUAL_DB = 4;
/** A flag's own maximum is looked for from this long before it on, s: a level point spans 0.2 s. */
const BEFORE_S = 0.1;

/** How far the level is under the best of the present sounding, the fork's dying taken out. */
export class WayBack {
  /** Points of the present sounding: when, and ln of the tone's mean square. */
  #timesS = new Float64Array(1024);
  #logs = new Float64Array(1024);
  #count = 0;
  /** How fast the fork's power dies, 1/s; kept here, since a number that is handed on is litter. */
  #dyingPerS = 0;

  /** Begins anew: another sounding. */
  clear(): void {
    this.#count = 0;
  }

  /** @param meanSquare  of the tone averaged in phase, > 0 */
  push(timeS: number, meanSquare: number): void {
    if (this.#count === this.#timesS.length) {
      this.#timesS = doubled(this.#timesS);
      this.#logs = doubled(this.#logs);
    }
    this.#timesS[this.#count] = timeS;
    this.#logs[this.#count] = Math.log(meanSquare);
    this.#count += 1;
  }

  /**
   * @param flagged  what was flagged so far, in order of time
   * @param present  the sounding that goes on: what was flagged before it doesn't count
   * @param decayTimeS  time in which the fork's amplitude falls to 1/e; null where not known yet
   * @returns null where nothing was flagged yet
   */
  guide(flagged: readonly Resonance[], present: Sounding, decayTimeS: number | null): Guidance | null {
    const last = this.#count - 1;
    let first = flagged.length;
    while (first > 0 && flagged[first - 1].timeS >= present.startS) first -= 1;
    if (last < 0 || first === flagged.length) return null;
    this.#dyingPerS = decayTimeS === null ? 0 : 2 / decayTimeS;
    let strongest = -Infinity;
    for (let i = first; i < flagged.length; i += 1) {
      strongest = Math.max(strongest, this.#undying(this.#pointAt(flagged[i])));
    }
    // The latest of them: the less the fork has died since, the less is left to correct.
    const least = strongest - EQUAL_DB / DB_PER_LN_POWER;
    let best = flagged.length - 1;
    while (best > first && this.#undying(this.#pointAt(flagged[best])) <= least) best -= 1;
    const bestTimeS = flagged[best].timeS;
    // A slow way back may climb higher than the passage that was flagged on the fly.
    let highest = -Infinity;
    for (let i = last; i >= 0 && this.#timesS[i] >= bestTimeS - BEFORE_S; i -= 1) {
      highest = Math.max(highest, this.#undying(i));
    }
    const belowBestDb = DB_PER_LN_POWER * (this.#undying(last) - highest);
    return { belowBestDb: Math.min(0, belowBestDb), bestTimeS };
  }

  /** Log level as if the fork did not die, up to a constant. */
  #undying(at: number): number {
    return this.#logs[at] + this.#dyingPerS * this.#timesS[at];
  }

  /** The newest point that isn't later than a resonance. */
  #pointAt({ timeS }: Resonance): number {
    let at = this.#count - 1;
    while (at > 0 && this.#timesS[at] > timeS) at -= 1;
    return at;
  }
}

function doubled(values: Float64Array): Float64Array<ArrayBuffer> {
  const larger = new Float64Array(2 * values.length);
  larger.set(values);
  return larger;
}
