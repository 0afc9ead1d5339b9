/** A line stands when it is this far above the floor, as a ratio of powers: 8 dB. */
const ABOVE_FLOOR = 6.3;
/** Looks in a row, of 0.08 s: no vowel is held at one pitch, to 5 Hz, for so long (1 s). */
const LEAST_LOOKS = 12;
/** Looks that a line may be missing: a knock or a loud word may cover it. */
const MOST_MISSED = 2;

/**
 * Lines of a spectrum that stand still for a second or more: other groups' forks, hum. Voices move.
 */
export class StandingLines {
  /** Weaker lines don't count, set before a look is taken in: the skirts of the tone listened to must not be taken for lines. */
  least = 0;
  /** What noise has in each bin, set likewise. */
  floor = 0;
  readonly #looks: Uint16Array;
  readonly #missed: Uint8Array;

  /** @param bins  of the spectrum */
  constructor(bins: number) {
    this.#looks = new Uint16Array(bins);
    this.#missed = new Uint8Array(bins);
  }

  /** Takes in one look. @param powers  one a bin */
  push(powers: Float64Array): void {
    const threshold = Math.max(ABOVE_FLOOR * this.floor, this.least);
    const looks = this.#looks;
    const missed = this.#missed;
    for (let bin = 0; bin < looks.length; bin += 1) {
      if (powers[bin] > threshold) {
        missed[bin] = 0;
        looks[bin] = Math.min(LEAST_LOOKS, looks[bin] + 1);
      } else if (missed[bin] < MOST_MISSED) missed[bin] = missed[bin] + 1;
      else looks[bin] = 0;
    }
  }

  stands(bin: number): boolean {
    return this.#looks[bin] >= LEAST_LOOKS;
  }
}
