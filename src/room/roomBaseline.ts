import type { FlankRows } from '../tone/sideBandNoise.ts';

/** Frames in the rolling median: 12 of 0.08 s, about one second. */
const MEDIAN_FRAMES = 12;
/** Frames over which the ratio of the fork's band to its flanks is learnt: about 4 s. */
const RATIO_FRAMES = 50;

/**
 * The room's noise at the fork's pitch, as a density, rolling.
 *
 * While no fork sounds, the band itself tells how its noise compares with the flanks' (a hum line, the room's
 * colour). While one sounds, the flanks alone carry the baseline on, through that ratio: a fork has nothing there,
 * so the baseline holds; a room that grows louder still raises it.
 */
export class RoomBaseline {
  /** A ring of the newest frames' densities, and the same in order. */
  readonly #recent = new Float64Array(MEDIAN_FRAMES).fill(Infinity);
  readonly #sorted = new Float64Array(MEDIAN_FRAMES);
  #frames = 0;
  #logRatio = 0;
  #density = 0;
  readonly #bandwidthHz: number;

  /** @param bandwidthHz  the narrow stream's noise-equivalent bandwidth, Hz, > 0 */
  constructor(bandwidthHz: number) {
    this.#bandwidthHz = bandwidthHz;
  }

  /** Mean square per Hz; null before the first frame. */
  get density(): number | null {
    return this.#frames === 0 ? null : this.#density;
  }

  /**
   * Takes in one frame.
   * @param flanks  the noise beside the pitch, mean square per Hz
   * @param frame  which of its frames
   * @param band  mean |value|² of the narrow stream over the frame, tone and noise together
   * @param forkSounds  whether a fork's tone is heard now
   */
  push(
    flanks: Pick<FlankRows, 'near'>,
    frame: number,
    band: { readonly meanSquare: number },
    forkSounds: boolean,
  ): void {
    const nearDensity = flanks.near[frame];
    this.#recent[this.#frames % MEDIAN_FRAMES] = nearDensity;
    this.#frames += 1;
    if (!forkSounds && nearDensity > 0 && band.meanSquare > 0) {
      const target = Math.log(band.meanSquare / this.#bandwidthHz / nearDensity);
      // Within a factor of 4 either way: more than that is a tone, not the room's colour.
      if (Math.abs(target) < Math.log(4)) this.#logRatio += (target - this.#logRatio) / RATIO_FRAMES;
    }
    this.#density = this.#median() * Math.exp(this.#logRatio);
  }

  #median(): number {
    this.#sorted.set(this.#recent);
    // What isn't filled yet stands last.
    this.#sorted.sort();
    const count = Math.min(this.#frames, MEDIAN_FRAMES);
    return (this.#sorted[(count - 1) >> 1] + this.#sorted[count >> 1]) / 2;
  }
}
