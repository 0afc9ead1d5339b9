import FFT from 'fft.js';

import { LOOK_FRAMES } from './sampleTally.ts';

/** Looks of one spectrum, 4096 frames: 85 ms at 48 kHz, lines 12 Hz apart. */
const LOOKS = 4;
const SPECTRUM_FRAMES = LOOKS * LOOK_FRAMES;
/** Where processing or a headset's voice profile ends its band, Hz, and what is compared on either side of it. */
const EDGES_HZ = [4000, 8000, 16_000] as const;
const BELOW = [0.72, 0.92] as const;
const ABOVE = [1.05, 1.22] as const;
/**
 * A fall of this much across a third of an octave is no room and no microphone's own roll-off (a first-order one falls
 * by 2 dB there, noise like talk by 4 dB); measured on generated recordings, `npm run bench:capture`.
 */
const EDGE_DB = 18;
/** Spectra, one a second, of which most must show the edge. */
const LEAST_SPECTRA = 4;
const SHARE = 0.65;
/** As many exact zeros in a row are a gap. */
const GAP_FRAMES = 48;
const KEPT_SPECTRA = 30;
/** Below this a band holds nothing to compare: 13 dB under the steps of 16 bits (mean square 1/12 step, -101 dB). */
const FLOOR_DB = -114;
/** Added to each line: far below the steps of 24 bits. */
const LEAST_POWER = 1e-15;
/** What the window makes of white noise of mean square 1, in one line: 3/8 of the frames. */
const LINE_OF_ONE_DB = 10 * Math.log10(0.375 * SPECTRUM_FRAMES);
/** Up to here a sound card's own filter leaves the band alone. */
const MOST_OF_RATE = 0.45;

/** The upper end of the sound's band. */
export interface BandEdge {
  /** 4000, 8000 or 16 000. */
  readonly edgeHz: number;
  /** Median fall across it, dB. */
  readonly fallDb: number;
}

/**
 * Looks once a second for a hole above 4, 8 or 16 kHz: what a headset's voice profile, a suppression of noise or
 * a coder leaves. That there is none proves nothing.
 */
export class BandEdgeWatch {
  private readonly fft = new FFT(SPECTRUM_FRAMES);
  private readonly input = new Float64Array(SPECTRUM_FRAMES);
  private readonly output = new Float64Array(2 * SPECTRUM_FRAMES);
  private readonly sums = new Float64Array(SPECTRUM_FRAMES / 2 + 1);
  private readonly window: Float64Array;
  private readonly edges: readonly { edgeHz: number; readonly fallsDb: number[] }[];
  private readonly stride: number;
  private readonly sorted = new Float64Array(KEPT_SPECTRA);
  private looks = 0;
  private found: BandEdge | null = null;

  constructor(private readonly sampleRateHz: number) {
    this.window = Float64Array.from({ length: SPECTRUM_FRAMES }, (_, i) => {
      return 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / SPECTRUM_FRAMES);
    });
    // What lies above the edge must be well inside what this rate can hold.
    this.edges = EDGES_HZ.filter((edgeHz) => ABOVE[1] * edgeHz < 0.46 * sampleRateHz).map((edgeHz) => ({
      edgeHz,
      fallsDb: [],
    }));
    this.stride = Math.max(LOOKS, Math.round(sampleRateHz / LOOK_FRAMES));
  }

  /** @param look  `LOOK_FRAMES` samples, the next ones each time */
  take(look: Float32Array): void {
    if (this.edges.length === 0) return;
    if (this.looks < LOOKS) {
      this.input.set(look, this.looks * LOOK_FRAMES);
      if (this.looks === LOOKS - 1) this.look();
    }
    this.looks += 1;
    if (this.looks >= this.stride) this.looks = 0;
  }

  /** Notes that sound was lost here: no spectrum spans it. */
  interrupt(): void {
    this.looks = 0;
  }

  /** The lowest edge that most of the recent spectra show; null where there is none. */
  get edge(): BandEdge | null {
    return this.found;
  }

  private find(): BandEdge | null {
    for (const { edgeHz, fallsDb } of this.edges) {
      if (fallsDb.length < LEAST_SPECTRA) return null;
      const sorted = this.sorted.fill(Infinity);
      for (let i = 0; i < fallsDb.length; i += 1) sorted[i] = fallsDb[i];
      sorted.sort();
      if (sorted[Math.floor((1 - SHARE) * fallsDb.length)] < EDGE_DB) continue;
      return { edgeHz, fallDb: sorted[fallsDb.length >> 1] };
    }
    return null;
  }

  private look(): void {
    const { input, window } = this;
    let zeros = 0;
    for (let i = 0; i < SPECTRUM_FRAMES; i += 1) {
      const sample = input[i];
      zeros = sample === 0 ? zeros + 1 : 0;
      // A spectrum that holds a gap would show the gap's own edges.
      if (zeros === GAP_FRAMES) return;
      input[i] = sample * window[i];
    }
    this.fft.realTransform(this.output, input);
    this.sumLevels();
    for (const { edgeHz, fallsDb } of this.edges) {
      const belowDb = this.levelDb(BELOW[0] * edgeHz, BELOW[1] * edgeHz);
      if (belowDb < FLOOR_DB) continue;
      // Nothing but a hole from here on: a gap with sound above it has another cause.
      const aboveDb = Math.max(
        this.levelDb(ABOVE[0] * edgeHz, ABOVE[1] * edgeHz),
        this.levelDb(ABOVE[0] * edgeHz, MOST_OF_RATE * this.sampleRateHz),
      );
      fallsDb.push(belowDb - aboveDb);
      if (fallsDb.length > KEPT_SPECTRA) fallsDb.shift();
    }
    this.found = this.find();
  }

  /** Running sum of the lines' levels, from which the mean of any band is one difference. */
  private sumLevels(): void {
    const { output, sums } = this;
    let sum = 0;
    for (let k = 0; k < SPECTRUM_FRAMES / 2; k += 1) {
      const re = output[2 * k];
      const im = output[2 * k + 1];
      sum += Math.log(re * re + im * im + LEAST_POWER);
      sums[k + 1] = sum;
    }
  }

  /** Mean of the lines' levels in dB, not the level of their mean: a fork's overtones are few lines and count little. */
  private levelDb(fromHz: number, toHz: number): number {
    const lineHz = this.sampleRateHz / SPECTRUM_FRAMES;
    const from = Math.ceil(fromHz / lineHz);
    const to = Math.max(from + 1, Math.floor(toHz / lineHz));
    const mean = (this.sums[to] - this.sums[from]) / (to - from);
    return (10 / Math.LN10) * mean - LINE_OF_ONE_DB;
  }
}
