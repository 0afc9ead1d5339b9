/** A line counts when it is this far above the floor, as a ratio of powers: 8 dB. */
const ABOVE_FLOOR = 6.3;
/** Frames in a row, of 0.08 s: no vowel is held at one pitch, to 5 Hz, for so long (1 s). */
const LEAST_FRAMES = 12;
/** Frames that a line may be missing: a knock or a loud word may cover it. */
const MOST_MISSED = 2;

/** Powers, in the spectrum's own unit. */
export interface LineThresholds {
  /** What noise has in each bin. */
  readonly floor: number;
  /** Weaker lines don't count: the skirts of the tone listened to must not be taken for lines. */
  readonly least: number;
}

/** Spectral lines that stand still for a second or more: other groups' forks, hum. Voices move. */
export class SteadyLines {
  private readonly present: Uint16Array;
  private readonly missed: Uint8Array;

  /** @param bins  of the spectrum */
  constructor(bins: number) {
    this.present = new Uint16Array(bins);
    this.missed = new Uint8Array(bins);
  }

  /** Takes in one frame. @param powers  one a bin */
  push(powers: Float64Array, { floor, least }: LineThresholds): void {
    const threshold = Math.max(ABOVE_FLOOR * floor, least);
    const present = this.present;
    const missed = this.missed;
    for (let bin = 0; bin < present.length; bin += 1) {
      if (powers[bin] > threshold) {
        missed[bin] = 0;
        present[bin] = Math.min(LEAST_FRAMES, present[bin] + 1);
      } else if (missed[bin] < MOST_MISSED) missed[bin] += 1;
      else present[bin] = 0;
    }
  }

  isSteady(bin: number): boolean {
    return this.present[bin] >= LEAST_FRAMES;
  }
}
