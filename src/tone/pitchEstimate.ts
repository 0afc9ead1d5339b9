import FFT from 'fft.js';

/** A tone's pitch relative to the frequency that was moved to 0 Hz. */
export interface PitchEstimate {
  readonly offsetHz: number;
  readonly standardUncertaintyHz: number;
  /** Share of the phase blocks that the tone explains, 0..1; near 0 for noise. */
  readonly coherence: number;
}

/** About so many values make a block whose mean gives one phase: 0.1 s of 100 a second. */
const BLOCK = 10;
const COARSE_SIZE = 1024;
const COARSE_SEGMENT = 256;
/** A tone outside of the range is looked for up to this distance, Hz, and hides what is 25 dB under it. */
const BESIDE_HZ = 20;
const FAR_STRONGER = 300;
/** How far the fine search goes from the coarse frequency. */
const REACH_HZ = 0.6;
/** Stretches within which even a fork that goes to and fro keeps its phase, mostly. */
const SHORT_S = 0.8;
const SHORT_GRID_HZ = 0.025;
/** How strongly the short stretches' power counts. */
const SIDEBAND_POWER = 12;

/**
 * Pitch of the strongest steady tone in a stretch of the narrow stream.
 *
 * 1. Coarse: spectra of 2.6 s stretches, amplitude limited so that neither a strike nor a resonance outweighs the
 *    rest, summed in power; highest bin within ±rangeHz.
 * 2. Fine: one phase per 0.1 s, the line φ = α + 2πνt fitted to all of them by maximising Σ w cos(φ − α − 2πνt),
 *    which needs no unwrapping: a turn of 2π in a passage changes nothing.
 * 3. Robust: blocks far off the line (the inside of a passage) lose their weight and the fit is repeated.
 *
 * The uncertainty is the line's slope error from the remaining phase scatter; scatter with a memory (an unsteady
 * hand) counts as fewer independent blocks: n_eff = n / (1 + 2 Σ ρ_k).
 *
 * @param re  narrow values, real parts; `im` alike
 * @param from  first index; `to`: one past the last; at least 30 values
 * @param rateHz  narrow values a second
 * @param noiseMeanSquare  mean |noise|² of one narrow value, for the blocks' weights
 * @returns null where the stretch is too short, nothing but zeros, or where all that is in reach is the foot of a tone
 *   outside of it
 */
export function estimatePitch(
  re: ArrayLike<number>,
  im: ArrayLike<number>,
  from: number,
  to: number,
  rateHz: number,
  rangeHz: number,
  noiseMeanSquare: number,
): PitchEstimate | null {
  if (to - from < 3 * BLOCK) return null;
  const coarseHz = coarseOffsetHz(re, im, from, to, rateHz, rangeHz);
  if (coarseHz === null) return null;
  return refineOffset(re, im, from, to, rateHz, coarseHz, noiseMeanSquare);
}

/** Room to work in, kept from one estimate to the next. */
const coarse = ((fft: FFT) => ({
  fft,
  data: new Float64Array(2 * COARSE_SIZE),
  out: fft.createComplexArray() as number[],
  power: new Float64Array(COARSE_SIZE),
}))(new FFT(COARSE_SIZE));

/** Highest bin of the summed, amplitude-limited spectra, parabola between bins. */
function coarseOffsetHz(
  re: ArrayLike<number>,
  im: ArrayLike<number>,
  from: number,
  to: number,
  rateHz: number,
  rangeHz: number,
): number | null {
  const magnitudes = new Float64Array(to - from);
  for (let i = from; i < to; i += 1)
    magnitudes[i - from] = Math.sqrt((re[i] as number) ** 2 + (im[i] as number) ** 2);
  const limit = magnitudes.slice().sort()[magnitudes.length >> 1] as number;
  if (!(limit > 0)) return null;
  const { data, out, power } = coarse;
  power.fill(0);
  const length = Math.min(COARSE_SEGMENT, to - from);
  const hop = Math.max(1, length >> 1);
  for (let start = from; start + length <= to; start += hop) {
    data.fill(0);
    for (let i = 0; i < length; i += 1) {
      const w = 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / length);
      const scale = w * Math.min(1, limit / (magnitudes[start - from + i] || 1));
      data[2 * i] = scale * (re[start + i] as number);
      data[2 * i + 1] = scale * (im[start + i] as number);
    }
    coarse.fft.transform(out, data);
    for (let bin = 0; bin < COARSE_SIZE; bin += 1) {
      power[bin] = (power[bin] as number) + (out[2 * bin] as number) ** 2 + (out[2 * bin + 1] as number) ** 2;
    }
  }
  const reach = Math.floor((rangeHz * COARSE_SIZE) / rateHz);
  const at = (bin: number): number => power[(bin + COARSE_SIZE) % COARSE_SIZE] as number;
  let best = 0;
  for (let bin = -reach; bin <= reach; bin += 1) if (at(bin) > at(best)) best = bin;
  // What is left beside a far stronger tone outside of the range is its foot, or noise under it.
  const beside = Math.floor((BESIDE_HZ * COARSE_SIZE) / rateHz);
  let outside = 0;
  for (let bin = reach + 1; bin <= beside; bin += 1) outside = Math.max(outside, at(bin), at(-bin));
  if (outside > FAR_STRONGER * at(best)) return null;
  if (Math.abs(best) === reach && at(best + Math.sign(best)) > at(best)) return null;
  const curve = at(best - 1) - 2 * at(best) + at(best + 1);
  const shift = curve < 0 ? (0.5 * (at(best - 1) - at(best + 1))) / curve : 0;
  return ((best + shift) * rateHz) / COARSE_SIZE;
}

function refineOffset(
  re: ArrayLike<number>,
  im: ArrayLike<number>,
  from: number,
  to: number,
  rateHz: number,
  coarseHz: number,
  noiseMeanSquare: number,
): PitchEstimate | null {
  // Blocks share all values evenly: a slope's variance goes with the third power of the length that is used.
  const count = Math.round((to - from) / BLOCK);
  const blockS = (to - from) / count / rateHz;
  const startOf = (b: number): number => from + Math.round((b * (to - from)) / count);
  const phase = new Float64Array(count);
  const signalToNoise = new Float64Array(count);
  const turn = (-2 * Math.PI * coarseHz) / rateHz;
  const turnCos = Math.cos(turn);
  const turnSin = Math.sin(turn);
  for (let b = 0; b < count; b += 1) {
    let x = 0;
    let y = 0;
    const n = startOf(b + 1) - startOf(b);
    let c = Math.cos(turn * (startOf(b) - from));
    let s = Math.sin(turn * (startOf(b) - from));
    for (let k = startOf(b); k < startOf(b + 1); k += 1) {
      x += (re[k] as number) * c - (im[k] as number) * s;
      y += (re[k] as number) * s + (im[k] as number) * c;
      const next = c * turnCos - s * turnSin;
      s = c * turnSin + s * turnCos;
      c = next;
    }
    phase[b] = Math.atan2(y, x);
    const power = (x * x + y * y) / (n * n);
    signalToNoise[b] = Math.max(0, power / (noiseMeanSquare / n + 1e-30) - 1);
  }
  // A phase's variance is 1/2SNR from noise plus the hand's unsteadiness (0.2 rad): the weight saturates.
  const weight = signalToNoise.map((snr) => 1 / (0.04 + 1 / (2 * snr + 1e-6)));
  let total = 0;
  for (const w of weight) total += w;
  if (!(total > 0)) return null;

  // Search the slope on a grid finer than half a turn over the stretch.
  const spanS = count * blockS;
  const gridHz = 1 / (6 * spanS);
  const arrows = weighedArrows(phase, weight);
  const likely = shortStretchPower(arrows, blockS);
  let bestHz = 0;
  let bestValue = -1;
  for (let hz = -REACH_HZ; hz <= REACH_HZ; hz += gridHz) {
    const value = coherentSum(arrows, hz, blockS).magnitude * likely(hz) ** SIDEBAND_POWER;
    if (value > bestValue) {
      bestValue = value;
      bestHz = hz;
    }
  }
  const robust = weight.slice();
  let slopeHz = bestHz;
  const residual = new Float64Array(count);
  for (let round = 0; round < 8; round += 1) {
    const alpha = coherentSum(weighedArrows(phase, robust), slopeHz, blockS).angle;
    let [sw, st, stt, sr, srt] = [0, 0, 0, 0, 0];
    for (let b = 0; b < count; b += 1) {
      const t = (b + 0.5) * blockS;
      const r = wrap((phase[b] as number) - alpha - 2 * Math.PI * slopeHz * t);
      residual[b] = r;
      const w = robust[b] as number;
      sw += w;
      st += w * t;
      stt += w * t * t;
      sr += w * r;
      srt += w * r * t;
    }
    const det = sw * stt - st * st;
    if (det > 0) slopeHz += (sw * srt - st * sr) / det / (2 * Math.PI);
    const scale = Math.max(0.15, 1.5 * weightedMedian(residual.map(Math.abs), weight));
    for (let b = 0; b < count; b += 1) {
      // Tukey's biweight at four scales.
      const u = (residual[b] as number) / (4 * scale);
      robust[b] = Math.abs(u) < 1 ? (weight[b] as number) * (1 - u * u) ** 2 : 0;
    }
  }
  let [sw, st, stt, srr] = [0, 0, 0, 0];
  for (let b = 0; b < count; b += 1) {
    const w = robust[b] as number;
    const t = (b + 0.5) * blockS;
    sw += w;
    st += w * t;
    stt += w * t * t;
    srr += w * (residual[b] as number) ** 2;
  }
  if (!(sw > 0)) return null;
  const spread = stt / sw - (st / sw) ** 2;
  const variance = srr / sw;
  const effective = (sw * sw) / sumOfSquares(robust) / memory(residual, robust);
  return {
    offsetHz: coarseHz + slopeHz,
    standardUncertaintyHz: Math.sqrt(variance / Math.max(1, effective - 2) / spread) / (2 * Math.PI),
    coherence: coherentSum(weighedArrows(phase, robust), slopeHz, blockS).magnitude / total,
  };
}

/**
 * Power of the tone in short stretches, summed without regard to the phase from one to the next, relative to its
 * highest value, as a function of the slope. A fork that goes to and fro turns the phase again and again: over the
 * whole stretch a sideband, a few tenths of a hertz off, can then outweigh the fork itself; within a second it can't.
 */
function shortStretchPower(arrows: Arrows, blockS: number): (slopeHz: number) => number {
  const count = arrows.x.length;
  const length = Math.min(count, Math.max(3, Math.round(SHORT_S / blockS)));
  const hop = Math.max(1, length >> 1);
  const steps = Math.round(REACH_HZ / SHORT_GRID_HZ);
  const power = new Float64Array(2 * steps + 1);
  let highest = 0;
  for (let i = -steps; i <= steps; i += 1) {
    let sum = 0;
    const turn = -2 * Math.PI * i * SHORT_GRID_HZ * blockS;
    for (let from = 0; from + length <= count; from += hop) sum += turnedPower(arrows, from, length, turn);
    power[i + steps] = sum;
    highest = Math.max(highest, sum);
  }
  return (slopeHz) => {
    const at = Math.max(0, Math.min(2 * steps, slopeHz / SHORT_GRID_HZ + steps));
    const low = Math.min(2 * steps - 1, Math.floor(at));
    const [a, b] = [power[low] as number, power[low + 1] as number];
    return highest > 0 ? (a + (at - low) * (b - a)) / highest : 1;
  };
}

/** One arrow a block, along its phase and as long as its weight. */
interface Arrows {
  readonly x: Float64Array;
  readonly y: Float64Array;
}

const weighedArrows = (phase: Float64Array, weight: Float64Array): Arrows => ({
  x: phase.map((angle, b) => (weight[b] as number) * Math.cos(angle)),
  y: phase.map((angle, b) => (weight[b] as number) * Math.sin(angle)),
});

/** Sum of the arrows, each turned back by the slope's phase in the middle of its block. */
function coherentSum({ x, y }: Arrows, hz: number, blockS: number): { magnitude: number; angle: number } {
  const turn = -2 * Math.PI * hz * blockS;
  const turnCos = Math.cos(turn);
  const turnSin = Math.sin(turn);
  let c = Math.cos(turn / 2);
  let s = Math.sin(turn / 2);
  let [sumX, sumY] = [0, 0];
  for (let b = 0; b < x.length; b += 1) {
    sumX += (x[b] as number) * c - (y[b] as number) * s;
    sumY += (x[b] as number) * s + (y[b] as number) * c;
    const next = c * turnCos - s * turnSin;
    s = c * turnSin + s * turnCos;
    c = next;
  }
  return { magnitude: Math.hypot(sumX, sumY), angle: Math.atan2(sumY, sumX) };
}

/** Power of the sum of `length` arrows from `from` on, each turned `turn` further than the one before. */
function turnedPower({ x, y }: Arrows, from: number, length: number, turn: number): number {
  const turnCos = Math.cos(turn);
  const turnSin = Math.sin(turn);
  let [c, s, sumX, sumY] = [1, 0, 0, 0];
  for (let b = from; b < from + length; b += 1) {
    sumX += (x[b] as number) * c - (y[b] as number) * s;
    sumY += (x[b] as number) * s + (y[b] as number) * c;
    const next = c * turnCos - s * turnSin;
    s = c * turnSin + s * turnCos;
    c = next;
  }
  return sumX * sumX + sumY * sumY;
}

/** 1 + 2 Σ ρ_k over the first positive run of autocorrelations: how many blocks make one independent one. */
function memory(residual: Float64Array, weight: Float64Array): number {
  let zero = 0;
  for (let b = 0; b < residual.length; b += 1) {
    zero += (weight[b] as number) ** 2 * (residual[b] as number) ** 2;
  }
  if (!(zero > 0)) return 1;
  let factor = 1;
  for (let lag = 1; lag < Math.min(40, residual.length >> 1); lag += 1) {
    let sum = 0;
    for (let b = lag; b < residual.length; b += 1) {
      const w = (weight[b] as number) * (weight[b - lag] as number);
      sum += w * (residual[b] as number) * (residual[b - lag] as number);
    }
    const rho = sum / zero;
    if (rho < 0.05) break;
    factor += 2 * rho;
  }
  return factor;
}

function sumOfSquares(values: Float64Array): number {
  let sum = 0;
  for (const value of values) sum += value * value;
  return sum;
}

/** Median of values, each counted by its weight. */
function weightedMedian(values: Float64Array, weights: Float64Array): number {
  const order = Array.from(values.keys()).sort((a, b) => (values[a] as number) - (values[b] as number));
  let half = 0;
  for (const w of weights) half += w / 2;
  for (const i of order) {
    half -= weights[i] as number;
    if (half <= 0) return values[i] as number;
  }
  return values[order[order.length - 1] as number] as number;
}

function wrap(angle: number): number {
  return angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
}
