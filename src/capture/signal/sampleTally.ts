/** Frames of one look: about 20 ms, short against talk, long against a period of the lowest fork. */
export const LOOK_FRAMES = 1024;
/** Frames that are summed to one value of the sound's lowest end, where hum is. */
export const SUMMED_FRAMES = 32;

/** A sample this near to full scale counts as clipped. */
const CLIP = 0.999;
/** Runs of this many samples at the limit are clipping; a single peak may just touch it. */
const CLIP_RUN = 3;
/** As many equal samples at a crest are a limit below full scale, such as that of a preamplifier. */
const FLAT_RUN = 4;
/** Below this a crest may be flat because the last bits are coarse. */
const FLAT_LEAST = 0.1;
/** Exact zeros for this long are no sound: 1.3 ms. */
const ZERO_RUN_S = 0.0013;
/** Mean size of the samples before from which silence is abrupt: four steps of 16 bits. */
const SOUND_BEFORE = 4 / 32_768;
/** Samples that this mean is taken over. */
const BEFORE_FRAMES = 64;

/**
 * Counts what is wrong with the samples themselves: clipping, flat crests, stretches of exact zeros, a mean beside
 * zero. Takes whole looks; one tight pass over each, a second one only where something may be wrong.
 */
export class SampleTally {
  /** Largest sample's size so far, 1 = full scale. */
  largest = 0;
  frames = 0;
  /** Times that the sound stood at full scale. */
  clips = 0;
  /** Times that the sound stood at a limit below full scale. */
  flats = 0;
  /** Stretches of exact zeros amid sound. */
  dropouts = 0;
  /** When the first one began, frames from the start; null before. */
  firstDropoutFrame: number | null = null;
  /** Of the last look: mean, and mean square of the differences between neighbours (the sound's upper end). */
  mean = 0;
  slopeMeanSquare = 0;
  /** Of the last look: means of `SUMMED_FRAMES` samples each. */
  readonly sums = new Float64Array(LOOK_FRAMES / SUMMED_FRAMES);
  private readonly zeroRun: number;
  private before = 0;
  private equalRun = 0;
  private clipRun = 0;
  /** Whether the zeros that run now began amid sound. */
  private isAbrupt = false;
  private tail = new Float32Array(BEFORE_FRAMES);
  private flatLevel = 0;
  private flatsAtLevel = 0;

  constructor(sampleRateHz: number) {
    this.zeroRun = Math.max(8, Math.round(ZERO_RUN_S * sampleRateHz));
  }

  /** @param count  frames of the look that hold sound, 1..LOOK_FRAMES; fewer than all only at the end */
  take(look: Float32Array, count: number): void {
    let { before } = this;
    let slope = 0;
    let total = 0;
    let equals = 0;
    let largest = 0;
    for (let start = 0; start < count; start += SUMMED_FRAMES) {
      const end = Math.min(count, start + SUMMED_FRAMES);
      let sum = 0;
      for (let i = start; i < end; i += 1) {
        const sample = look[i];
        const step = sample - before;
        sum += sample;
        slope += step * step;
        if (step === 0) equals += 1;
        const size = Math.abs(sample);
        if (size > largest) largest = size;
        before = sample;
      }
      total += sum;
      this.sums[start / SUMMED_FRAMES] = sum / SUMMED_FRAMES;
    }
    if (largest > this.largest) this.largest = largest;
    if (equals > 0 || this.equalRun > 0) this.countEquals(look, count);
    if (largest >= CLIP) this.countClips(look, count);
    else this.clipRun = 0;
    this.before = before;
    this.mean = total / count;
    this.slopeMeanSquare = slope / count;
    this.frames += count;
    if (count < BEFORE_FRAMES) return;
    for (let i = 0; i < BEFORE_FRAMES; i += 1) this.tail[i] = look[count - BEFORE_FRAMES + i];
  }

  /** Notes that sound was lost here: nothing spans it. */
  interrupt(): void {
    this.equalRun = 0;
    this.clipRun = 0;
    this.isAbrupt = false;
    this.tail.fill(0);
  }

  private countClips(look: Float32Array, count: number): void {
    for (let i = 0; i < count; i += 1) {
      if (Math.abs(look[i]) < CLIP) this.clipRun = 0;
      else {
        this.clipRun += 1;
        if (this.clipRun === CLIP_RUN) this.clips += 1;
      }
    }
  }

  private countEquals(look: Float32Array, count: number): void {
    let { before } = this;
    for (let i = 0; i < count; i += 1) {
      const sample = look[i];
      if (sample === before) {
        this.equalRun += 1;
        // How loud it was before the first zero decides whether the zeros are sound.
        if (sample === 0 && this.equalRun === 1) this.isAbrupt = this.meanBefore(look, i - 1) >= SOUND_BEFORE;
      } else if (this.equalRun > 0) {
        this.endEqual(before, this.frames + i);
      }
      before = sample;
    }
  }

  /** Mean size of the samples before a place in the look, which reach back into the look before. */
  private meanBefore(look: Float32Array, at: number): number {
    let sum = 0;
    for (let i = at - BEFORE_FRAMES; i < at; i += 1) {
      sum += Math.abs(i < 0 ? this.tail[Math.max(0, BEFORE_FRAMES + i)] : look[i]);
    }
    return sum / BEFORE_FRAMES;
  }

  private endEqual(level: number, frame: number): void {
    const run = this.equalRun + 1;
    if (level === 0) {
      if (this.isAbrupt && run >= this.zeroRun) {
        this.dropouts += 1;
        this.firstDropoutFrame ??= frame - run;
      }
    } else if (run >= FLAT_RUN && Math.abs(level) >= FLAT_LEAST && Math.abs(level) < CLIP) {
      this.countFlat(Math.abs(level));
    }
    this.equalRun = 0;
    this.isAbrupt = false;
  }

  /** Flat crests count where they lie at one and the same level, and nothing is above it. */
  private countFlat(level: number): void {
    if (Math.abs(level - this.flatLevel) > 0.002 * level) {
      this.flatLevel = level;
      this.flatsAtLevel = 0;
    }
    this.flatsAtLevel += 1;
    if (this.flatsAtLevel > 2 && level >= 0.998 * this.largest) this.flats += 1;
  }
}
