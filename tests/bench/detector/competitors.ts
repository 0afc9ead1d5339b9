import FFT from 'fft.js';
import { lockIn } from './lockIn.ts';
import type { Flag } from './score.ts';

/** A level against time, as a simpler tool would watch it. */
export interface LevelSeries {
  readonly valuesPerSecond: number;
  /** Time of the first value, s. */
  readonly firstS: number;
  readonly levelDb: Float64Array;
}

/** A maximum, how far it stands out, and when the level had fallen by so much that this could be said. */
export interface Candidate {
  readonly timeS: number;
  readonly prominenceDb: number;
  /** For each whole dB of threshold from 1 on: when the level was that far below the peak; null: never. */
  readonly fallenS: readonly (number | null)[];
}

export type CompetitorName = 'broadband level' | 'spectrum bin' | 'plain lock-in';
export const COMPETITORS: readonly CompetitorName[] = ['broadband level', 'spectrum bin', 'plain lock-in'];

/** Thresholds that are tried, dB. */
export const THRESHOLDS_DB: readonly number[] = Array.from({ length: 45 }, (_, i) => i + 1);

/** Levels below this are all alike to these tools, dB re a mean square of 1. */
const FLOOR_DB = -110;

/** What a simpler tool would take for peaks in one recording. */
export function candidates(
  name: CompetitorName,
  samples: Float32Array,
  sampleRateHz: number,
  pitchHz: number,
): Candidate[] {
  switch (name) {
    case 'broadband level':
      return peaksOf(broadbandLevel(samples, sampleRateHz));
    case 'spectrum bin':
      return peaksOf(spectrumBin(samples, sampleRateHz, pitchHz));
    case 'plain lock-in':
      return peaksOf(lockInLevel(samples, sampleRateHz, pitchHz));
  }
}

/** The flags that a threshold on the prominence makes of the candidates. */
export function flagsAbove(found: readonly Candidate[], thresholdDb: number): Flag[] {
  return found
    .filter((each) => each.prominenceDb >= thresholdDb)
    .map((each) => ({ timeS: each.timeS, flaggedAtS: each.fallenS[thresholdDb - 1] ?? null }));
}

/** Level of the whole sound, five times a second. */
export function broadbandLevel(samples: Float32Array, sampleRateHz: number): LevelSeries {
  const block = Math.round(sampleRateHz / 5);
  const levelDb = new Float64Array(Math.floor(samples.length / block));
  for (let i = 0; i < levelDb.length; i += 1) {
    let sum = 0;
    for (let j = i * block; j < (i + 1) * block; j += 1) sum += samples[j] * samples[j];
    levelDb[i] = decibels(sum / block);
  }
  return { valuesPerSecond: 5, firstS: 0.1, levelDb };
}

/** The bin nearest to the pitch of a 2048-point Blackman spectrum, 60 times a second, each mixed with 0.8 of the last. */
export function spectrumBin(samples: Float32Array, sampleRateHz: number, pitchHz: number): LevelSeries {
  const size = 2048;
  const hop = Math.round(sampleRateHz / 60);
  const fft = new FFT(size);
  const spectrum = fft.createComplexArray() as number[];
  const frame = new Float64Array(size);
  const bin = Math.round((pitchHz * size) / sampleRateHz);
  const levelDb = new Float64Array(Math.max(0, Math.floor((samples.length - size) / hop) + 1));
  let smoothed = 0;
  for (let i = 0; i < levelDb.length; i += 1) {
    for (let j = 0; j < size; j += 1) {
      const angle = (2 * Math.PI * j) / size;
      frame[j] = samples[i * hop + j] * (0.42 - 0.5 * Math.cos(angle) + 0.08 * Math.cos(2 * angle));
    }
    fft.realTransform(spectrum, frame);
    // A sine of amplitude A reads 0.42 A size / 2.
    const amplitude = Math.hypot(spectrum[2 * bin], spectrum[2 * bin + 1]) / (0.21 * size);
    smoothed = 0.8 * smoothed + 0.2 * amplitude;
    levelDb[i] = decibels((smoothed * smoothed) / 2);
  }
  return { valuesPerSecond: sampleRateHz / hop, firstS: size / 2 / sampleRateHz, levelDb };
}

/** Lock-in at the stamped pitch with a noise bandwidth of 10 Hz, 50 values a second. */
export function lockInLevel(samples: Float32Array, sampleRateHz: number, pitchHz: number): LevelSeries {
  const band = lockIn(samples, sampleRateHz, pitchHz, 10, 50);
  const levelDb = band.re.map((re, i) => decibels((re * re + band.im[i] ** 2) / 2));
  // Two one-poles of time constant 1 / 4B come 1 / 2B late.
  return { valuesPerSecond: band.rateHz, firstS: 1 / band.rateHz - 0.05, levelDb };
}

/** Every maximum with its prominence: peak minus the higher of the minima between it and a higher point or an end. */
export function peaksOf(series: LevelSeries): Candidate[] {
  const { levelDb, valuesPerSecond, firstS } = series;
  const found: Candidate[] = [];
  for (let i = 1; i < levelDb.length - 1; i += 1) {
    const here = levelDb[i];
    if (levelDb[i - 1] >= here || levelDb[i + 1] > here) continue;
    let left = here;
    for (let j = i - 1; j >= 0 && levelDb[j] <= here; j -= 1) left = Math.min(left, levelDb[j]);
    let right = here;
    let last = i + 1;
    const fallenS: (number | null)[] = [];
    for (; last < levelDb.length && levelDb[last] < here; last += 1) {
      right = Math.min(right, levelDb[last]);
      while (fallenS.length + 1 <= here - right && fallenS.length < THRESHOLDS_DB.length) {
        fallenS.push(firstS + last / valuesPerSecond);
      }
    }
    const prominenceDb = here - Math.max(left, right);
    if (prominenceDb >= 1) found.push({ timeS: firstS + i / valuesPerSecond, prominenceDb, fallenS });
  }
  return found;
}

function decibels(meanSquare: number): number {
  return Math.max(FLOOR_DB, 10 * Math.log10(meanSquare + 1e-20));
}
