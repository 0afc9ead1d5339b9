import type { Random } from './random.ts';

/** Root mean square of samples; 0 for none. */
export function rootMeanSquare(samples: Float32Array): number {
  let sum = 0;
  for (let i = 0; i < samples.length; i += 1) sum += samples[i] * samples[i];
  return samples.length === 0 ? 0 : Math.sqrt(sum / samples.length);
}

/** target += gain * source, in place. */
export function mix(target: Float32Array, source: Float32Array, gain: number): void {
  const n = Math.min(target.length, source.length);
  for (let i = 0; i < n; i += 1) target[i] += gain * source[i];
}

/** Room noise that falls by about 3 dB an octave between 20 Hz and 8 kHz: a sum of one-pole low-passes. Unit rms. */
export function pinkNoise(random: Random, length: number, rateHz: number): Float32Array {
  const corners = [15, 60, 240, 960, 3840];
  const steps = corners.map((corner) => 1 - Math.exp((-2 * Math.PI * corner) / rateHz));
  const state = corners.map(() => 0);
  const weights = corners.map((corner) => 1 / Math.sqrt(corner));
  const result = new Float32Array(length);
  for (let i = 0; i < length; i += 1) {
    // Uniform noise is white too, and faster to make.
    let sum = 0;
    const white = random.next() - 0.5;
    for (let j = 0; j < 5; j += 1) {
      state[j] += steps[j] * (white - state[j]);
      sum += weights[j] * state[j];
    }
    result[i] = sum;
  }
  return unitRms(result);
}

/** Mains hum with harmonics whose levels fall unevenly. Unit rms. */
export function hum(random: Random, length: number, rateHz: number): Float32Array {
  const mains = random.pick([50, 60]) + 0.03 * random.gauss();
  const result = new Float32Array(length);
  for (let order = 1; order * mains < 2500; order += 1) {
    const level = (Math.exp(0.7 * random.gauss()) * (order % 2 === 0 ? 1 : 0.5)) / order ** 0.9;
    const step = (2 * Math.PI * order * mains) / rateHz;
    const start = random.uniform(0, 2 * Math.PI);
    for (let i = 0; i < length; i += 1) result[i] += level * Math.sin(start + step * i);
  }
  return unitRms(result);
}

/**
 * Rubbing of a tube that slides: band noise whose level follows the speed, rough like stick and slip.
 * About unit rms at 3 cm/s.
 */
export function scrape(
  random: Random,
  lengthM: Float64Array,
  lengthRateHz: number,
  length: number,
  rateHz: number,
): Float32Array {
  const result = new Float32Array(length);
  const low = 1 - Math.exp((-2 * Math.PI * random.uniform(1500, 5000)) / rateHz);
  const high = 1 - Math.exp((-2 * Math.PI * random.uniform(150, 500)) / rateHz);
  const roughStep = 1 - Math.exp((-2 * Math.PI * random.uniform(8, 40)) / rateHz);
  let smooth = 0;
  let base = 0;
  let rough = 0;
  const raw = new Float32Array(length);
  for (let i = 0; i < length; i += 1) {
    smooth += low * (random.next() - 0.5 - smooth);
    base += high * (smooth - base);
    raw[i] = smooth - base;
  }
  unitRms(raw);
  const roughScale = Math.sqrt((2 - roughStep) / roughStep);
  for (let i = 0; i < length; i += 1) {
    const j = Math.min(lengthM.length - 1, Math.floor((i / rateHz) * lengthRateHz));
    const before = Math.max(0, j - Math.round(0.02 * lengthRateHz));
    const speed = Math.abs(lengthM[j] - lengthM[before]) / 0.02;
    rough += roughStep * ((random.next() - 0.5) * 3.46 - rough);
    result[i] = raw[i] * Math.min(2, speed / 0.03) * Math.exp(0.7 * roughScale * rough);
  }
  return result;
}

/** Things put down or bumped: short damped tones and a click each. Peaks of about 1. */
export function knocks(random: Random, length: number, rateHz: number, perSecond: number): Float32Array {
  const result = new Float32Array(length);
  let timeS = -Math.log(1 - random.next()) / perSecond;
  while (timeS * rateHz < length) {
    const level = Math.exp(0.5 * random.gauss()) * 0.5;
    for (let mode = 0; mode < 4; mode += 1) {
      addBurst(result, rateHz, timeS, {
        level: level * random.uniform(0.2, 1),
        frequencyHz: random.uniform(80, 900),
        decayS: random.uniform(0.004, 0.05),
      });
    }
    timeS -= Math.log(1 - random.next()) / perSecond;
  }
  return result;
}

/** Adds one damped tone with a rise of half a millisecond. */
export function addBurst(
  target: Float32Array,
  rateHz: number,
  startS: number,
  burst: { level: number; frequencyHz: number; decayS: number },
): void {
  const first = Math.round(startS * rateHz);
  const last = Math.min(target.length, first + Math.ceil(burst.decayS * 7 * rateHz));
  const step = (2 * Math.PI * burst.frequencyHz) / rateHz;
  for (let i = Math.max(0, first); i < last; i += 1) {
    const since = (i - first) / rateHz;
    target[i] +=
      burst.level *
      Math.min(1, since / 0.0005) *
      Math.exp(-since / burst.decayS) *
      Math.sin(step * (i - first));
  }
}

/** Scales in place to a root mean square of 1. */
export function unitRms(samples: Float32Array): Float32Array {
  const rms = rootMeanSquare(samples);
  if (rms > 0) for (let i = 0; i < samples.length; i += 1) samples[i] /= rms;
  return samples;
}
