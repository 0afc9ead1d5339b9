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
  readonly #looks: Uint16Array;
  readonly #missed: Uint8Array;

  /** @param bins  of the spectrum */
  constructor(bins: number) {
    this.#looks = new Uint16Array(bins);
    this.#missed = new Uint8Array(bins);
  }

  /** Takes in one bin of a look. @param floor  what noise has there */
  push(bin: number, power: number, floor: number): void {
    if (power > ABOVE_FLOOR * floor) {
      this.#missed[bin] = 0;
      if ((this.#looks[bin] as number) < LEAST_LOOKS) this.#looks[bin] = (this.#looks[bin] as number) + 1;
      return;
    }
    this.#missed[bin] = (this.#missed[bin] as number) + 1;
    if ((this.#missed[bin]) > MOST_MISSED) this.#looks[bin] = 0;
  }

  stands(bin: number): boolean {
    return (this.#looks[bin] as number) >= LEAST_LOOKS;
  }
}
