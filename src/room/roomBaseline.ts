/** Frames in the rolling median: 12 of 0.08 s, about one second. */
const MEDIAN_FRAMES = 12;
/** Frames over which the ratio of the fork's band to its side bands is learnt: about 4 s. */
const RATIO_FRAMES = 50;

/** What one frame tells of the room. */
export interface RoomFrame {
  /** The noise in the near side bands, mean square per Hz. */
  readonly nearDensity: number;
  /** Mean |value|² of the narrow stream over the frame, tone and noise together. */
  readonly bandMeanSquare: number;
  /** Whether a fork's tone is heard now. */
  readonly forkSounds: boolean;
}

/**
 * The room's noise at the fork's frequency, as a density, rolling.
 *
 * While no fork sounds, the band itself tells how its noise compares with the side bands' (a hum line, the room's
 * colour). While one sounds, the side bands alone carry the baseline on, through that ratio: a fork has nothing there,
 * so the baseline holds; a room that grows louder still raises it.
 */
export class RoomBaseline {
  /** A ring of the newest frames' densities. */
  private readonly recent = new Float64Array(MEDIAN_FRAMES).fill(Infinity);
  private frames = 0;
  private logRatio = 0;
  private currentDensity = 0;
  private readonly bandwidthHz: number;

  /** @param bandwidthHz  the narrow stream's noise-equivalent bandwidth, Hz, > 0 */
  constructor(bandwidthHz: number) {
    this.bandwidthHz = bandwidthHz;
  }

  /** Mean square per Hz; null before the first frame. */
  get density(): number | null {
    return this.frames === 0 ? null : this.currentDensity;
  }

  push({ nearDensity, bandMeanSquare, forkSounds }: RoomFrame): void {
    this.recent[this.frames % MEDIAN_FRAMES] = nearDensity;
    this.frames += 1;
    if (!forkSounds && nearDensity > 0 && bandMeanSquare > 0) {
      const target = Math.log(bandMeanSquare / this.bandwidthHz / nearDensity);
      // Within a factor of 4 either way: more than that is a tone, not the room's colour.
      if (Math.abs(target) < Math.log(4)) this.logRatio += (target - this.logRatio) / RATIO_FRAMES;
    }
    this.currentDensity = this.median() * Math.exp(this.logRatio);
  }

  private median(): number {
    // What isn't filled yet stands last.
    const sorted = this.recent.slice().sort();
    const count = Math.min(this.frames, MEDIAN_FRAMES);
    return (sorted[(count - 1) >> 1] + sorted[count >> 1]) / 2;
  }
}
