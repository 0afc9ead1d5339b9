import { ANALYSIS_BLOCK } from './analysisBlock.ts';
import { BandEdgeWatch } from './bandEdge.ts';
import type { BandEdge } from './bandEdge.ts';
import { FloorWatch } from './floorWatch.ts';
import { HumWatch } from './humWatch.ts';
import type { Hum } from './humWatch.ts';
import { SampleTally } from './sampleTally.ts';

/** A mean this far from zero is an offset, of full scale: ten times what sound cards have. Common practice, no source. */
const OFFSET = 0.01;
/** Blocks over which the offset is averaged: about two seconds. */
const OFFSET_BLOCKS = 94;
/** Blocks between two judgements: half a second. */
const JUDGED_BLOCKS = 24;

/** What the samples say about the way that they came here. Each is null or 0 where there is nothing to tell. */
export interface SignalFindings {
  /** Largest sample's size, 1 = full scale. */
  readonly largest: number;
  /** Times at full scale, or at a limit below it. */
  readonly clips: number;
  readonly flats: number;
  /** Stretches of exact zeros amid sound, and when the first began. */
  readonly dropouts: number;
  readonly firstDropoutS: number | null;
  /** Mean of the last two seconds, of full scale, where it is far from 0. */
  readonly offset: number | null;
  readonly hum: Hum | null;
  readonly edge: BandEdge | null;
  readonly floorFallDb: number | null;
}

/**
 * All checks of the signal as one streaming stage: pure, the same however the sound is cut into pushes, and cheap
 * (one pass over the samples and one transform a second).
 */
export class SignalWatch {
  private readonly sampleRateHz: number;
  private readonly tally: SampleTally;
  private readonly edge: BandEdgeWatch;
  private readonly hum: HumWatch;
  private readonly floor = new FloorWatch();
  /** The block that isn't complete yet. */
  private readonly block = new Float32Array(ANALYSIS_BLOCK);
  private filled = 0;
  /** Of the last two seconds' samples. */
  private mean = 0;
  private blocks = 0;
  /** null: sound has come since they were last worked out. */
  private found: SignalFindings | null = null;

  /** @param sampleRateHz  8000..384000 */
  constructor(sampleRateHz: number) {
    this.sampleRateHz = sampleRateHz;
    this.tally = new SampleTally(sampleRateHz);
    this.edge = new BandEdgeWatch(sampleRateHz);
    this.hum = new HumWatch(sampleRateHz);
  }

  /** @param samples  mono, any length */
  push(samples: Float32Array): void {
    for (let taken = 0; taken < samples.length;) {
      const part = Math.min(samples.length - taken, ANALYSIS_BLOCK - this.filled);
      const piece = samples.subarray(taken, taken + part);
      taken += part;
      // A whole block needs no copy.
      if (part === ANALYSIS_BLOCK) this.takeBlock(piece);
      else {
        this.block.set(piece, this.filled);
        this.filled += part;
        if (this.filled === ANALYSIS_BLOCK) this.takeBlock(this.block);
      }
    }
  }

  /** Notes that sound was lost here: no check spans it. */
  interrupt(): void {
    this.finish();
    this.tally.interrupt();
    this.edge.interrupt();
    this.hum.interrupt();
  }

  get frames(): number {
    return this.tally.frames;
  }

  /** Largest sample so far, to the last whole block. */
  get largest(): number {
    return this.tally.largest;
  }

  /** As of the last half second. */
  get findings(): SignalFindings {
    this.found ??= this.judge();
    return this.found;
  }

  /** Has sound come since the findings were last asked for that may change them? */
  get isNew(): boolean {
    return this.found === null;
  }

  /** Brings counts and findings up to the last sample. */
  finish(): void {
    if (this.filled > 0) this.tally.take(this.block.subarray(0, this.filled));
    this.filled = 0;
    this.found = null;
  }

  private takeBlock(block: Float32Array): void {
    this.filled = 0;
    const { mean, slopeMeanSquare, lowEnd } = this.tally.take(block);
    this.edge.take(block);
    this.hum.take(lowEnd);
    this.floor.take(slopeMeanSquare);
    this.blocks += 1;
    this.mean += (mean - this.mean) / Math.min(this.blocks, OFFSET_BLOCKS);
    if (this.blocks % JUDGED_BLOCKS === 0) this.found = null;
  }

  private judge(): SignalFindings {
    const { largest, clips, flats, dropouts, firstDropoutFrame } = this.tally;
    const isOffset = this.blocks >= OFFSET_BLOCKS / 2 && Math.abs(this.mean) > OFFSET;
    return {
      largest,
      clips,
      flats,
      dropouts,
      firstDropoutS: firstDropoutFrame === null ? null : firstDropoutFrame / this.sampleRateHz,
      offset: isOffset ? this.mean : null,
      hum: this.hum.hum,
      edge: this.edge.edge,
      floorFallDb: this.floor.fallDb,
    };
  }
}
