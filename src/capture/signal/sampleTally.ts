import { ANALYSIS_BLOCK } from './analysisBlock.ts';

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

/** What a block's samples are on average. */
export interface BlockMeans {
  readonly mean: number;
  /** Mean square of the differences between neighbours: the sound's upper end. */
  readonly slopeMeanSquare: number;
  /** Means of `SUMMED_FRAMES` samples each; as many as the block holds, the rest is left from before. Filled anew by the next. */
  readonly lowEnd: Float64Array;
}

/**
 * Counts what is wrong with the samples themselves: clipping, flat crests, stretches of exact zeros. One tight pass
 * over each block, a second one only where something may be wrong.
 */
export class SampleTally {
  private largestSoFar = 0;
  private frameCount = 0;
  private clipCount = 0;
  private flatCount = 0;
  private dropoutCount = 0;
  private firstDropout: number | null = null;
  private readonly lowEnd = new Float64Array(ANALYSIS_BLOCK / SUMMED_FRAMES);
  private readonly zeroRun: number;
  /** The last sample of the block before. */
  private before = 0;
  private equalRun = 0;
  private clipRun = 0;
  /** Whether the zeros that run now began amid sound. */
  private isAbrupt = false;
  private readonly tail = new Float32Array(BEFORE_FRAMES);
  private flatLevel = 0;
  private flatsAtLevel = 0;

  constructor(sampleRateHz: number) {
    this.zeroRun = Math.max(8, Math.round(ZERO_RUN_S * sampleRateHz));
  }

  /** Largest sample's size so far, 1 = full scale. */
  get largest(): number {
    return this.largestSoFar;
  }

  get frames(): number {
    return this.frameCount;
  }

  /** Times that the sound stood at full scale. */
  get clips(): number {
    return this.clipCount;
  }

  /** Times that the sound stood at a limit below full scale. */
  get flats(): number {
    return this.flatCount;
  }

  /** Stretches of exact zeros amid sound. */
  get dropouts(): number {
    return this.dropoutCount;
  }

  /** When the first of these began, frames from the start; null before. */
  get firstDropoutFrame(): number | null {
    return this.firstDropout;
  }

  /** @param block  1..ANALYSIS_BLOCK samples; fewer than all only where the sound ends or was lost */
  take(block: Float32Array): BlockMeans {
    const count = block.length;
    let before = this.before;
    let slope = 0;
    let total = 0;
    let equals = 0;
    let largest = 0;
    for (let start = 0; start < count; start += SUMMED_FRAMES) {
      const end = Math.min(count, start + SUMMED_FRAMES);
      let sum = 0;
      for (let i = start; i < end; i += 1) {
        const sample = block[i];
        const step = sample - before;
        sum += sample;
        slope += step * step;
        if (step === 0) equals += 1;
        const size = Math.abs(sample);
        if (size > largest) largest = size;
        before = sample;
      }
      total += sum;
      this.lowEnd[start / SUMMED_FRAMES] = sum / SUMMED_FRAMES;
    }
    if (largest > this.largestSoFar) this.largestSoFar = largest;
    if (equals > 0 || this.equalRun > 0) this.countEquals(block);
    if (largest >= CLIP) this.countClips(block);
    else this.clipRun = 0;
    this.before = before;
    this.frameCount += count;
    if (count >= BEFORE_FRAMES) this.tail.set(block.subarray(count - BEFORE_FRAMES));
    return { mean: total / count, slopeMeanSquare: slope / count, lowEnd: this.lowEnd };
  }

  /** Notes that sound was lost here: nothing spans it. */
  interrupt(): void {
    this.equalRun = 0;
    this.clipRun = 0;
    this.isAbrupt = false;
    this.tail.fill(0);
  }

  private countClips(block: Float32Array): void {
    for (const sample of block) {
      if (Math.abs(sample) < CLIP) this.clipRun = 0;
      else {
        this.clipRun += 1;
        if (this.clipRun === CLIP_RUN) this.clipCount += 1;
      }
    }
  }

  private countEquals(block: Float32Array): void {
    let before = this.before;
    for (let i = 0; i < block.length; i += 1) {
      const sample = block[i];
      if (sample === before) {
        this.equalRun += 1;
        // How loud it was before the first zero decides whether the zeros are sound.
        if (sample === 0 && this.equalRun === 1) {
          this.isAbrupt = this.meanBefore(block, i - 1) >= SOUND_BEFORE;
        }
      } else if (this.equalRun > 0) {
        this.endEqual(before, this.frameCount + i);
      }
      before = sample;
    }
  }

  /** Mean size of the samples before a place in the block, which reach back into the block before. */
  private meanBefore(block: Float32Array, at: number): number {
    let sum = 0;
    for (let i = at - BEFORE_FRAMES; i < at; i += 1) {
      sum += Math.abs(i < 0 ? this.tail[Math.max(0, BEFORE_FRAMES + i)] : block[i]);
    }
    return sum / BEFORE_FRAMES;
  }

  private endEqual(level: number, frame: number): void {
    const run = this.equalRun + 1;
    if (level === 0) {
      if (this.isAbrupt && run >= this.zeroRun) {
        this.dropoutCount += 1;
        this.firstDropout ??= frame - run;
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
    if (this.flatsAtLevel > 2 && level >= 0.998 * this.largestSoFar) this.flatCount += 1;
  }
}
