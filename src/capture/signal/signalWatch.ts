import { BandEdgeWatch } from './bandEdge.ts';
import type { BandEdge } from './bandEdge.ts';
import { FloorWatch } from './floorWatch.ts';
import { HumWatch } from './humWatch.ts';
import type { Hum } from './humWatch.ts';
import { LOOK_FRAMES, SampleTally } from './sampleTally.ts';

/** A mean this far from zero is an offset, of full scale: ten times what sound cards have. Common practice, no source. */
const OFFSET = 0.01;
/** Looks over which the offset is averaged: about two seconds. */
const OFFSET_LOOKS = 94;

/** Looks between two judgements: half a second. */
const JUDGED_LOOKS = 24;

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
  private readonly tally: SampleTally;
  private readonly edge: BandEdgeWatch;
  private readonly hum: HumWatch;
  private readonly floor = new FloorWatch();
  private readonly look = new Float32Array(LOOK_FRAMES);
  private filled = 0;
  private mean = 0;
  private looks = 0;
  /** One room, filled anew by each judgement. */
  private readonly found: { -readonly [name in keyof SignalFindings]: SignalFindings[name] } = {
    largest: 0,
    clips: 0,
    flats: 0,
    dropouts: 0,
    firstDropoutS: null,
    offset: null,
    hum: null,
    edge: null,
    floorFallDb: null,
  };
  private isJudged = false;

  /** @param sampleRateHz  8000..384000 */
  constructor(private readonly sampleRateHz: number) {
    this.tally = new SampleTally(sampleRateHz);
    this.edge = new BandEdgeWatch(sampleRateHz);
    this.hum = new HumWatch(sampleRateHz);
  }

  /** @param samples  mono, any length */
  push(samples: Float32Array): void {
    for (let taken = 0; taken < samples.length;) {
      const part = Math.min(samples.length - taken, LOOK_FRAMES - this.filled);
      const piece = part === samples.length ? samples : samples.subarray(taken, taken + part);
      taken += part;
      // A whole look needs no copy.
      if (part === LOOK_FRAMES) this.takeLook(piece);
      else {
        this.look.set(piece, this.filled);
        this.filled += part;
        if (this.filled === LOOK_FRAMES) this.takeLook(this.look);
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

  /** Largest sample so far, to the last whole look. */
  get largest(): number {
    return this.tally.largest;
  }

  /** As of the last half second; the same room each time. */
  get findings(): SignalFindings {
    if (!this.isJudged) this.judge();
    return this.found;
  }

  /** Has sound come since the findings were last asked for that may change them? */
  get isNew(): boolean {
    return !this.isJudged;
  }

  /** Brings counts and findings up to the last sample. */
  finish(): void {
    if (this.filled > 0) this.tally.take(this.look, this.filled);
    this.filled = 0;
    this.isJudged = false;
  }

  private takeLook(look: Float32Array): void {
    const { tally } = this;
    this.filled = 0;
    tally.take(look, LOOK_FRAMES);
    this.edge.take(look);
    this.hum.take(tally.sums);
    this.floor.take(tally);
    this.looks += 1;
    this.mean += (tally.mean - this.mean) / Math.min(this.looks, OFFSET_LOOKS);
    if (this.looks % JUDGED_LOOKS === 0) this.isJudged = false;
  }

  private judge(): void {
    const { tally, found } = this;
    const { firstDropoutFrame } = tally;
    found.largest = tally.largest;
    found.clips = tally.clips;
    found.flats = tally.flats;
    found.dropouts = tally.dropouts;
    found.firstDropoutS = firstDropoutFrame === null ? null : firstDropoutFrame / this.sampleRateHz;
    found.offset = this.looks >= OFFSET_LOOKS / 2 && Math.abs(this.mean) > OFFSET ? this.mean : null;
    found.hum = this.hum.hum;
    found.edge = this.edge.edge;
    found.floorFallDb = this.floor.fallDb;
    this.isJudged = true;
  }
}
