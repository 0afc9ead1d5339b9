import type { Envelope } from './column.ts';

/**
 * Plain lock-in: multiply by the carrier, low-pass with two equal one-poles, keep some values a second.
 * Two cascaded one-poles of time constant t have a noise bandwidth of 1 / 8t on each side of the carrier
 * (Harris 1978's tables do not hold it; it is the integral of 1 / (1 + (2 pi f t)²)², 1 / 4t over both sides).
 * @param bandwidthHz  noise bandwidth over both sides of the carrier
 */
export function lockIn(
  samples: Float32Array,
  sampleRateHz: number,
  frequencyHz: number,
  bandwidthHz: number,
  valuesPerSecond: number,
): Envelope {
  const step = 1 - Math.exp((-4 * bandwidthHz) / sampleRateHz);
  const every = Math.round(sampleRateHz / valuesPerSecond);
  const count = Math.floor(samples.length / every);
  const re = new Float64Array(count);
  const im = new Float64Array(count);
  const turn = (2 * Math.PI * frequencyHz) / sampleRateHz;
  const turnCos = Math.cos(turn);
  const turnSin = Math.sin(turn);
  let cos = 1;
  let sin = 0;
  let a = 0;
  let b = 0;
  let c = 0;
  let d = 0;
  for (let i = 0; i < count * every; i += 1) {
    const value = 2 * samples[i];
    a += step * (value * cos - a);
    b += step * (-value * sin - b);
    c += step * (a - c);
    d += step * (b - d);
    if (i % every === every - 1) {
      re[(i - every + 1) / every] = c;
      im[(i - every + 1) / every] = d;
      // Rounding must not let the carrier grow.
      const start = turn * (i + 1);
      cos = Math.cos(start);
      sin = Math.sin(start);
      continue;
    }
    const next = cos * turnCos - sin * turnSin;
    sin = cos * turnSin + sin * turnCos;
    cos = next;
  }
  return { rateHz: sampleRateHz / every, re, im };
}
