import FFT from 'fft.js';
import { fillPrefixSums, rangeSum } from '../../numeric/prefixSum.ts';
import { ANALYSIS_BLOCK } from './analysisBlock.ts';

/** Blocks of one spectrum, 4096 samples: 85 ms at 48 kHz, lines 12 Hz apart. */
const SPECTRUM_BLOCKS = 4;
const SIZE = SPECTRUM_BLOCKS * ANALYSIS_BLOCK;
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
const LINE_OF_ONE_DB = 10 * Math.log10(0.375 * SIZE);
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
 * Takes a spectrum once a second and searches it for a hole above 4, 8 or 16 kHz: what a headset's voice profile, a
 * suppression of noise or a coder leaves. That there is none proves nothing.
 */
export class BandEdgeWatch {
  private readonly sampleRateHz: number;
  private readonly fft = new FFT(SIZE);
  private readonly window = Float64Array.from(
    { length: SIZE },
    (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / SIZE),
  );
  private readonly input = new Float64Array(SIZE);
  private readonly spectrum = new Float64Array(2 * SIZE);
  private readonly logPowers = new Float64Array(SIZE / 2);
  /** Prefix sums of the lines' logarithms, from which the mean of any band is one difference. */
  private readonly sums = new Float64Array(SIZE / 2 + 1);
  private readonly edges: readonly { readonly edgeHz: number; readonly fallsDb: number[] }[];
  /** Blocks from the beginning of one spectrum to the next. */
  private readonly stride: number;
  private blocks = 0;
  private found: BandEdge | null = null;

  constructor(sampleRateHz: number) {
    this.sampleRateHz = sampleRateHz;
    // What lies above the edge must be well inside what this rate can hold.
    this.edges = EDGES_HZ.filter((edgeHz) => ABOVE[1] * edgeHz < 0.46 * sampleRateHz).map((edgeHz) => ({
      edgeHz,
      fallsDb: [],
    }));
    this.stride = Math.max(SPECTRUM_BLOCKS, Math.round(sampleRateHz / ANALYSIS_BLOCK));
  }

  /** @param block  `ANALYSIS_BLOCK` samples, the next ones each time */
  take(block: Float32Array): void {
    if (this.edges.length === 0) return;
    if (this.blocks < SPECTRUM_BLOCKS) {
      this.input.set(block, this.blocks * ANALYSIS_BLOCK);
      if (this.blocks === SPECTRUM_BLOCKS - 1) this.takeSpectrum();
    }
    this.blocks += 1;
    if (this.blocks >= this.stride) this.blocks = 0;
  }

  /** Notes that sound was lost here: no spectrum spans it. */
  interrupt(): void {
    this.blocks = 0;
  }

  /** The lowest edge that most of the recent spectra show; null where there is none. */
  get edge(): BandEdge | null {
    return this.found;
  }

  private takeSpectrum(): void {
    const input = this.input;
    if (hasGap(input)) return;
    for (let i = 0; i < SIZE; i += 1) input[i] *= this.window[i];
    this.fft.realTransform(this.spectrum, input);
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
    this.found = this.lowestEdge();
  }

  private sumLevels(): void {
    const spectrum = this.spectrum;
    for (let k = 0; k < SIZE / 2; k += 1) {
      const re = spectrum[2 * k];
      const im = spectrum[2 * k + 1];
      this.logPowers[k] = Math.log(re * re + im * im + LEAST_POWER);
    }
    fillPrefixSums(this.logPowers, this.sums, SIZE / 2);
  }

  /** Mean of the lines' levels in dB, not the level of their mean: a fork's overtones are few lines and count little. */
  private levelDb(fromHz: number, toHz: number): number {
    const lineHz = this.sampleRateHz / SIZE;
    const from = Math.ceil(fromHz / lineHz);
    const to = Math.max(from + 1, Math.floor(toHz / lineHz));
    return (10 / Math.LN10) * (rangeSum(this.sums, from, to) / (to - from)) - LINE_OF_ONE_DB;
  }

  private lowestEdge(): BandEdge | null {
    for (const { edgeHz, fallsDb } of this.edges) {
      if (fallsDb.length < LEAST_SPECTRA) return null;
      const sorted = [...fallsDb].sort((a, b) => a - b);
      if (sorted[Math.floor((1 - SHARE) * sorted.length)] < EDGE_DB) continue;
      return { edgeHz, fallDb: sorted[sorted.length >> 1] };
    }
    return null;
  }
}

/** A spectrum that holds a gap would show the gap's own edges. */
function hasGap(samples: Float64Array): boolean {
  let zeros = 0;
  for (let i = 0; i < samples.length; i += 1) {
    zeros = samples[i] === 0 ? zeros + 1 : 0;
    if (zeros === GAP_FRAMES) return true;
  }
  return false;
}
