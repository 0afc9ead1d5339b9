import { weightedMedian } from '../numeric/quickselect.ts';

/** A tone's pitch relative to the frequency that was moved to 0 Hz. */
export interface PitchEstimate {
  readonly offsetHz: number;
  readonly standardUncertaintyHz: number;
  /** Share of the phase blocks that the tone explains, 0..1; near 0 for noise. */
  readonly coherence: number;
}

/** About so many values make a block whose mean gives one phase: 0.1 s of 100 a second. */
export const BLOCK = 10;
/** How far the search goes from the coarse frequency, Hz. */
const REACH_HZ = 0.6;
/** Stretches within which even a fork that goes to and fro keeps its phase, mostly. */
const SHORT_S = 0.8;
/** A stretch of 0.8 s answers over ±1 Hz: its power is a smooth curve at this distance. */
const SHORT_GRID_HZ = 0.1;
const SHORT_STEPS = Math.round(REACH_HZ / SHORT_GRID_HZ);
/** How strongly the short stretches' power counts. */
const SIDEBAND_POWER = 12;
/** Rounds of the robust line, at most; it stands when it moves by less than this, Hz. */
const MOST_ROUNDS = 8;
const STILL_HZ = 1e-5;

/**
 * Room to work in, one place a block, kept from one estimate to the next. The line's numbers are in it, too: handed from
 * function to function, each would be litter.
 */
interface Room {
  /** One block's length, s. */
  blockS: number;
  /** The line's slope beside the coarse pitch, Hz. */
  slopeHz: number;
  readonly phase: Float64Array;
  /** Its cosine and sine. */
  readonly cos: Float64Array;
  readonly sin: Float64Array;
  readonly weight: Float64Array;
  /** The weight that is left to each block as the line is made robust. */
  readonly robust: Float64Array;
  readonly residual: Float64Array;
  /** Arrows along each block's phase, as long as its weight. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly sizes: Float64Array;
  readonly sizeWeights: Float64Array;
}

let largest = roomFor(256);
let present = largest;
const shortPower = new Float64Array(2 * SHORT_STEPS + 1);
/** The last coherent sum. */
const sum = { magnitude: 0, angle: 0 };

/**
 * Robust line through the phase of a stretch, one phase per 0.1 s: φ = α + 2πνt fitted to all of them by maximising
 * Σ w cos(φ − α − 2πνt), which needs no unwrapping: a turn of 2π in a passage changes nothing. Then blocks far off
 * the line (the inside of a passage) lose their weight and the fit is repeated.
 *
 * The uncertainty is the line's slope error from the remaining phase scatter; scatter with a memory (an unsteady
 * hand) counts as fewer independent blocks: n_eff = n / (1 + 2 Σ ρ_k).
 * @param re  narrow values, real parts; `im` alike
 * @param from  first index; `to`: one past the last; at least 30 values
 * @param coarseHz  the pitch, known to within 0.6 Hz
 * @param noiseMeanSquare  mean |noise|² of one narrow value, for the blocks' weights
 * @returns null where no block stands out of the noise
 */
export function fitPhaseLine(
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
  const room = roomOf(count);
  room.blockS = (to - from) / count / rateHz;
  readPhases(room, re, im, from, to, (-2 * Math.PI * coarseHz) / rateHz, noiseMeanSquare);
  let total = 0;
  for (let b = 0; b < count; b += 1) total += room.weight[b];
  if (!(total > 0)) return null;
  findLikeliestSlope(room);
  room.robust.set(room.weight);
  for (let round = 0; round < MOST_ROUNDS; round += 1) if (!moveLine(room)) break;
  return estimateOf(room, coarseHz, total);
}

/** One phase and its weight a block. @param turn  of the coarse frequency from one value to the next, backwards, rad */
function readPhases(
  { phase, cos, sin, weight }: Room,
  re: ArrayLike<number>,
  im: ArrayLike<number>,
  from: number,
  to: number,
  turn: number,
  noiseMeanSquare: number,
): void {
  const count = phase.length;
  const turnCos = Math.cos(turn);
  const turnSin = Math.sin(turn);
  let start = from;
  for (let b = 0; b < count; b += 1) {
    const end = from + Math.round(((b + 1) * (to - from)) / count);
    const n = end - start;
    let x = 0;
    let y = 0;
    let c = Math.cos(turn * (start - from));
    let s = Math.sin(turn * (start - from));
    for (let k = start; k < end; k += 1) {
      x += re[k] * c - im[k] * s;
      y += re[k] * s + im[k] * c;
      const next = c * turnCos - s * turnSin;
      s = c * turnSin + s * turnCos;
      c = next;
    }
    phase[b] = Math.atan2(y, x);
    const size = Math.sqrt(x * x + y * y);
    cos[b] = size > 0 ? x / size : 1;
    sin[b] = size > 0 ? y / size : 0;
    const power = (x * x + y * y) / (n * n);
    const signalToNoise = Math.max(0, power / (noiseMeanSquare / n + 1e-30) - 1);
    // A phase's variance is 1/2SNR from noise plus the hand's unsteadiness (0.2 rad): the weight saturates.
    weight[b] = 1 / (0.04 + 1 / (2 * signalToNoise + 1e-6));
    start = end;
  }
}

/** Sets the best slope on a grid finer than half a turn over the stretch. */
function findLikeliestSlope(room: Room): void {
  const { blockS } = room;
  const gridHz = 1 / (6 * room.phase.length * blockS);
  drawArrows(room, room.weight);
  const highest = sumShortStretches(room);
  room.slopeHz = 0;
  let bestValue = -1;
  for (let hz = -REACH_HZ; hz <= REACH_HZ; hz += gridHz) {
    sumArrows(room, hz, blockS);
    const value = sum.magnitude * (shortPowerAt(hz) / highest) ** SIDEBAND_POWER;
    if (value > bestValue) {
      bestValue = value;
      room.slopeHz = hz;
    }
  }
}

/** One round: the line through what has kept its weight, then new weights. @returns whether the slope has moved */
function moveLine(room: Room): boolean {
  const { blockS, slopeHz, phase, weight, robust, residual, sizes, sizeWeights } = room;
  const count = phase.length;
  drawArrows(room, robust);
  sumArrows(room, slopeHz, blockS);
  const { angle } = sum;
  let sw = 0;
  let st = 0;
  let stt = 0;
  let sr = 0;
  let srt = 0;
  for (let b = 0; b < count; b += 1) {
    const t = (b + 0.5) * blockS;
    const r = wrap(phase[b] - angle - 2 * Math.PI * slopeHz * t);
    residual[b] = r;
    sizes[b] = Math.abs(r);
    const w = robust[b];
    sw += w;
    st += w * t;
    stt += w * t * t;
    sr += w * r;
    srt += w * r * t;
  }
  sizeWeights.set(weight);
  const scale = Math.max(0.15, 1.5 * weightedMedian(sizes, sizeWeights));
  for (let b = 0; b < count; b += 1) {
    // Tukey's biweight at four scales.
    const u = residual[b] / (4 * scale);
    const rest = Math.abs(u) < 1 ? 1 - u * u : 0;
    robust[b] = weight[b] * rest * rest;
  }
  const det = sw * stt - st * st;
  const moveHz = det > 0 ? (sw * srt - st * sr) / det / (2 * Math.PI) : 0;
  room.slopeHz += moveHz;
  return Math.abs(moveHz) >= STILL_HZ;
}

function estimateOf(room: Room, coarseHz: number, total: number): PitchEstimate | null {
  const { blockS, slopeHz, robust, residual } = room;
  let sw = 0;
  let sww = 0;
  let st = 0;
  let stt = 0;
  let srr = 0;
  for (let b = 0; b < robust.length; b += 1) {
    const w = robust[b];
    const t = (b + 0.5) * blockS;
    sw += w;
    sww += w * w;
    st += w * t;
    stt += w * t * t;
    srr += w * residual[b] ** 2;
  }
  if (!(sw > 0)) return null;
  const spread = stt / sw - (st / sw) ** 2;
  const variance = srr / sw;
  const effective = (sw * sw) / sww / memory(residual, robust);
  drawArrows(room, robust);
  sumArrows(room, slopeHz, blockS);
  return {
    offsetHz: coarseHz + slopeHz,
    standardUncertaintyHz: Math.sqrt(variance / Math.max(1, effective - 2) / spread) / (2 * Math.PI),
    coherence: sum.magnitude / total,
  };
}

/**
 * Power of the tone in short stretches, summed without regard to the phase from one to the next, as a function of the
 * slope. A fork that goes to and fro turns the phase again and again: over the whole stretch a sideband, a few tenths
 * of a hertz off, can then outweigh the fork itself; within a second it can't.
 * @returns the highest, > 0
 */
function sumShortStretches({ x, y, blockS }: Room): number {
  const length = Math.min(x.length, Math.max(3, Math.round(SHORT_S / blockS)));
  const hop = Math.max(1, length >> 1);
  let highest = 0;
  for (let i = -SHORT_STEPS; i <= SHORT_STEPS; i += 1) {
    const turn = -2 * Math.PI * i * SHORT_GRID_HZ * blockS;
    let power = 0;
    for (let from = 0; from + length <= x.length; from += hop) power += turnedPower(x, y, from, length, turn);
    shortPower[i + SHORT_STEPS] = power;
    highest = Math.max(highest, power);
  }
  return highest > 0 ? highest : 1;
}

/** Between the grid's places: a parabola through the three nearest. */
function shortPowerAt(hz: number): number {
  const at = hz / SHORT_GRID_HZ + SHORT_STEPS;
  const middle = Math.max(1, Math.min(2 * SHORT_STEPS - 1, Math.round(at)));
  const off = at - middle;
  const low = shortPower[middle - 1];
  const here = shortPower[middle];
  const high = shortPower[middle + 1];
  return Math.max(0, here + (off / 2) * (high - low) + (off * off * (low - 2 * here + high)) / 2);
}

function drawArrows({ cos, sin, x, y }: Room, lengths: Float64Array): void {
  for (let b = 0; b < cos.length; b += 1) {
    x[b] = lengths[b] * cos[b];
    y[b] = lengths[b] * sin[b];
  }
}

/** Adds the arrows up, each turned back by the slope's phase in the middle of its block; the result is in `sum`. */
function sumArrows({ x, y }: Room, hz: number, blockS: number): void {
  const turn = -2 * Math.PI * hz * blockS;
  const turnCos = Math.cos(turn);
  const turnSin = Math.sin(turn);
  let c = Math.cos(turn / 2);
  let s = Math.sin(turn / 2);
  let sumX = 0;
  let sumY = 0;
  for (let b = 0; b < x.length; b += 1) {
    sumX += x[b] * c - y[b] * s;
    sumY += x[b] * s + y[b] * c;
    const next = c * turnCos - s * turnSin;
    s = c * turnSin + s * turnCos;
    c = next;
  }
  sum.magnitude = Math.sqrt(sumX * sumX + sumY * sumY);
  sum.angle = Math.atan2(sumY, sumX);
}

/** Power of the sum of `length` arrows from `from` on, each turned `turn` further than the one before. */
function turnedPower(x: Float64Array, y: Float64Array, from: number, length: number, turn: number): number {
  const turnCos = Math.cos(turn);
  const turnSin = Math.sin(turn);
  let c = 1;
  let s = 0;
  let sumX = 0;
  let sumY = 0;
  for (let b = from; b < from + length; b += 1) {
    sumX += x[b] * c - y[b] * s;
    sumY += x[b] * s + y[b] * c;
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
    zero += weight[b] ** 2 * residual[b] ** 2;
  }
  if (!(zero > 0)) return 1;
  let factor = 1;
  for (let lag = 1; lag < Math.min(40, residual.length >> 1); lag += 1) {
    let shared = 0;
    for (let b = lag; b < residual.length; b += 1) {
      const w = weight[b] * weight[b - lag];
      shared += w * residual[b] * residual[b - lag];
    }
    const rho = shared / zero;
    if (rho < 0.05) break;
    factor += 2 * rho;
  }
  return factor;
}

function wrap(angle: number): number {
  return angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
}

/** Room for so many blocks; live, it is the same again and again. */
function roomOf(blocks: number): Room {
  if (largest.phase.length < blocks) largest = roomFor(2 * blocks);
  if (present.phase.length !== blocks || present.phase.buffer !== largest.phase.buffer) {
    present = partOf(largest, blocks);
  }
  return present;
}

function roomFor(blocks: number): Room {
  const row = (): Float64Array => new Float64Array(blocks);
  return {
    blockS: NaN,
    slopeHz: NaN,
    phase: row(),
    cos: row(),
    sin: row(),
    weight: row(),
    robust: row(),
    residual: row(),
    x: row(),
    y: row(),
    sizes: row(),
    sizeWeights: row(),
  };
}

function partOf(room: Room, blocks: number): Room {
  return {
    blockS: NaN,
    slopeHz: NaN,
    phase: room.phase.subarray(0, blocks),
    cos: room.cos.subarray(0, blocks),
    sin: room.sin.subarray(0, blocks),
    weight: room.weight.subarray(0, blocks),
    robust: room.robust.subarray(0, blocks),
    residual: room.residual.subarray(0, blocks),
    x: room.x.subarray(0, blocks),
    y: room.y.subarray(0, blocks),
    sizes: room.sizes.subarray(0, blocks),
    sizeWeights: room.sizeWeights.subarray(0, blocks),
  };
}
