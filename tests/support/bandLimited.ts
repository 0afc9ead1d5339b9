/**
 * What is left of samples below an edge: a windowed-sinc low-pass of 401 taps (Blackman; stop band below -74 dB,
 * transition 5.5 / 401 of the rate; from memory).
 * @param edgeHz  middle of the transition
 */
export function bandLimited(samples: Float32Array, sampleRateHz: number, edgeHz: number): Float32Array {
  const half = 200;
  const cut = edgeHz / sampleRateHz;
  const taps = Float64Array.from({ length: 2 * half + 1 }, (_, i) => {
    const n = i - half;
    const window = 0.42 + 0.5 * Math.cos((Math.PI * n) / half) + 0.08 * Math.cos((2 * Math.PI * n) / half);
    return window * (n === 0 ? 2 * cut : Math.sin(2 * Math.PI * cut * n) / (Math.PI * n));
  });
  return samples.map((_, i) => {
    let sum = 0;
    const from = Math.max(0, half - i);
    const to = Math.min(taps.length, samples.length + half - i);
    for (let k = from; k < to; k += 1) sum += taps[k] * samples[i + k - half];
    return sum;
  });
}
