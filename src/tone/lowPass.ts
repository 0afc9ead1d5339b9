/**
 * Taps of a linear-phase low-pass: windowed sinc with a Kaiser window, unit gain at 0 Hz.
 * @param cutoffHz  middle of the transition (-6 dB), > 0
 * @param transitionHz  full width of the transition, > 0
 * @param attenuationDb  in the stop band, > 21
 * @returns Float64Array of odd length
 * @see Kaiser 1974, length and shape formulas (as given in Oppenheim & Schafer, Discrete-Time Signal Processing, §7.5)
 * @example
 * const taps = lowPassTaps(48_000, 1000, 500, 60);
 * taps.reduce((sum, tap) => sum + tap) // → 1
 */
export function lowPassTaps(
  sampleRateHz: number,
  cutoffHz: number,
  transitionHz: number,
  attenuationDb: number,
): Float64Array {
  const half = Math.ceil(
    (attenuationDb - 7.95) / (2 * 2.285 * ((2 * Math.PI * transitionHz) / sampleRateHz)),
  );
  const beta =
    attenuationDb > 50
      ? 0.1102 * (attenuationDb - 8.7)
      : 0.5842 * (attenuationDb - 21) ** 0.4 + 0.07886 * (attenuationDb - 21);
  const taps = new Float64Array(2 * half + 1);
  let sum = 0;
  for (let i = -half; i <= half; i += 1) {
    const x = (2 * Math.PI * cutoffHz * i) / sampleRateHz;
    const sinc = i === 0 ? 1 : Math.sin(x) / x;
    const tap = sinc * besselI0(beta * Math.sqrt(1 - (i / (half + 1)) ** 2));
    taps[i + half] = tap;
    sum += tap;
  }
  return taps.map((tap) => tap / sum);
}

/**
 * Taps of a moving average over `length` values, taken `times` times over (a CIC filter's response): zeros of that order at every multiple of
 * rate / length, where a decimation by `length` would fold.
 * @returns Float64Array of length times × (length − 1) + 1, unit gain at 0 Hz
 * @see Hogenauer 1981, IEEE Trans. Acoust. Speech Signal Process. 29, 155
 * @example
 * movingAverageTaps(2, 2) // → [0.25, 0.5, 0.25]
 */
export function movingAverageTaps(length: number, times: number): Float64Array {
  let taps = Float64Array.of(1);
  for (let round = 0; round < times; round += 1) {
    const wider = new Float64Array(taps.length + length - 1);
    taps.forEach((tap, i) => {
      for (let k = 0; k < length; k += 1) wider[i + k] = wider[i + k] + tap / length;
    });
    taps = wider;
  }
  return taps;
}

/** Modified Bessel function of the first kind, order 0, by its power series. */
function besselI0(x: number): number {
  let term = 1;
  let sum = 1;
  for (let k = 1; term > 1e-12 * sum; k += 1) {
    term *= (x / (2 * k)) ** 2;
    sum += term;
  }
  return sum;
}

/**
 * Power response: share of a tone's power that passes a symmetric low-pass of odd length. @param offsetHz  the tone's distance from 0 Hz
 * @example
 * powerResponse(Float64Array.of(0.25, 0.5, 0.25), 25, 100) // → 0.25
 */
export function powerResponse(taps: Float64Array, offsetHz: number, sampleRateHz: number): number {
  const half = (taps.length - 1) / 2;
  const turn = (2 * Math.PI * offsetHz) / sampleRateHz;
  let sum = 0;
  for (let i = 0; i < taps.length; i += 1) sum += taps[i] * Math.cos(turn * (i - half));
  return sum * sum;
}

/**
 * Noise-equivalent bandwidth of a complex low-pass, both sides of 0 Hz together: fs · Σh² / (Σh)².
 * @example
 * noiseBandwidthHz(Float64Array.of(0.5, 0.5), 100) // → 50
 */
export function noiseBandwidthHz(taps: Float64Array, sampleRateHz: number): number {
  let sum = 0;
  let squares = 0;
  for (const tap of taps) {
    sum += tap;
    squares += tap * tap;
  }
  return (sampleRateHz * squares) / (sum * sum);
}
