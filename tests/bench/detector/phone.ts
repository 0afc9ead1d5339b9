import FFT from 'fft.js';
import type { Random } from './random.ts';

/** Half of a frame of the coder. */
const FRAME = 1024;

/** What a phone does to sound: a small microphone's band, now and then gain control, and a lossy coder. */
export function throughPhone(random: Random, samples: Float32Array, rateHz: number): Float32Array {
  const low = 1 - Math.exp((-2 * Math.PI * random.uniform(40, 220)) / rateHz);
  const high = 1 - Math.exp((-2 * Math.PI * random.uniform(2500, 14000)) / rateHz);
  let base = 0;
  let smooth = 0;
  const heard = new Float32Array(samples.length);
  for (let i = 0; i < samples.length; i += 1) {
    base += low * (samples[i] - base);
    smooth += high * (samples[i] - base - smooth);
    heard[i] = smooth;
  }
  if (random.chance(0.25)) controlGain(random, heard, rateHz);
  return random.chance(0.75) ? coded(heard, random.uniform(0.08, 0.6)) : heard;
}

/** Slow gain control that takes off a part of the level's changes. */
function controlGain(random: Random, samples: Float32Array, rateHz: number): void {
  const share = random.uniform(0.1, 0.4);
  const attack = 1 - Math.exp(-1 / (random.uniform(0.05, 0.3) * rateHz));
  const release = 1 - Math.exp(-1 / (random.uniform(0.8, 3) * rateHz));
  let mean = 0.02;
  for (let i = 0; i < samples.length; i += 1) {
    const size = Math.abs(samples[i]);
    mean += (size > mean ? attack : release) * (size - mean);
    samples[i] *= (0.05 / Math.max(mean, 0.002)) ** share;
  }
}

/**
 * A transform coder: a modified discrete cosine transform whose values are rounded, more coarsely where a band is loud,
 * so that what is faint beside something loud is lost.
 * @param coarseness  step over a band's rms
 * @see Princen, Johnson & Bradley 1987, ICASSP (the transform, a sine window)
 */
function coded(samples: Float32Array, coarseness: number): Float32Array {
  const fft = new FFT(2 * FRAME);
  const result = new Float32Array(samples.length);
  const input = new Float64Array(4 * FRAME);
  const output = fft.createComplexArray() as number[];
  const values = new Float64Array(FRAME);
  const shift = (FRAME + 1) / 2;
  for (let start = -FRAME; start < samples.length; start += FRAME) {
    for (let n = 0; n < 2 * FRAME; n += 1) {
      const x = (samples[start + n] ?? 0) * window(n);
      const turn = (Math.PI * n) / (2 * FRAME);
      input[2 * n] = x * Math.cos(turn);
      input[2 * n + 1] = -x * Math.sin(turn);
    }
    fft.transform(output, input);
    for (let k = 0; k < FRAME; k += 1) {
      const turn = (Math.PI * shift * (k + 0.5)) / FRAME;
      values[k] = output[2 * k] * Math.cos(turn) + output[2 * k + 1] * Math.sin(turn);
    }
    roundInBands(values, coarseness);
    input.fill(0);
    for (let k = 0; k < FRAME; k += 1) {
      // The conjugate, since only the forward transform is at hand.
      const turn = (Math.PI * shift * k) / FRAME;
      input[2 * k] = values[k] * Math.cos(turn);
      input[2 * k + 1] = -values[k] * Math.sin(turn);
    }
    fft.transform(output, input);
    for (let n = 0; n < 2 * FRAME; n += 1) {
      const i = start + n;
      if (i < 0 || i >= samples.length) continue;
      const turn = (Math.PI * (n + shift)) / (2 * FRAME);
      const y = output[2 * n] * Math.cos(turn) + output[2 * n + 1] * Math.sin(turn);
      result[i] += (2 / FRAME) * window(n) * y;
    }
  }
  return result;
}

const window = (n: number): number => Math.sin((Math.PI * (n + 0.5)) / (2 * FRAME));

/** Rounds to multiples of a step in bands that are four lines wide at first and grow by a quarter. */
function roundInBands(values: Float64Array, coarseness: number): void {
  for (let from = 0, width = 4; from < values.length; from += Math.floor(width), width *= 1.25) {
    const to = Math.min(values.length, from + Math.floor(width));
    let power = 0;
    for (let k = from; k < to; k += 1) power += values[k] ** 2;
    const step = coarseness * Math.sqrt(power / (to - from)) + 1e-9;
    for (let k = from; k < to; k += 1) values[k] = step * Math.round(values[k] / step);
  }
}
