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
  const padded = new Float64Array(samples.length + 2 * half);
  padded.set(samples, half);
  return samples.map((_, i) => {
    // The taps are symmetrical: half of the products do.
    let sum = taps[half] * padded[i + half];
    for (let k = 0; k < half; k += 1) {
      sum += taps[k] * (padded[i + k] + padded[i + 2 * half - k]);
    }
    return sum;
  });
}
