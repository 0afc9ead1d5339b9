import { weightedMedian } from '../numeric/quickselect.ts';
import { blockPhases } from './blockPhases.ts';
import type { BlockPhases } from './blockPhases.ts';
import { sumAlongLine, weightedPhasors } from './phasorSum.ts';
import { likeliestSlopeHz } from './slopeSearch.ts';
import type { ToneSegment } from './toneSegment.ts';

/** A tone's frequency relative to the one that was moved to 0 Hz. */
export interface FrequencyEstimate {
  readonly offsetHz: number;
  readonly standardUncertaintyHz: number;
  /** Share of the phase blocks that the tone explains, 0..1; near 0 for noise. */
  readonly coherence: number;
}

/** Rounds of the robust line, at most; it stands when it moves by less than this, Hz. */
const MOST_ROUNDS = 8;
const STILL_HZ = 1e-5;

/** A line through the phases, and what it makes of each block. */
interface RobustLine {
  readonly slopeHz: number;
  /** By how much the last round moved it. */
  readonly moveHz: number;
  /** Weight that is left to each block. */
  readonly robust: Float64Array;
  /** Phase less the line before the last move, rad. */
  readonly residualRad: Float64Array;
}

/**
 * Frequency from a robust regression on the phase of a segment, one phase per 0.1 s (Tretter 1985, IEEE Trans. Inf.
 * Theory 31, 832): the slope with the largest phasor sum, then least squares repeated, blocks far off the line (the
 * inside of a passage) losing their weight.
 *
 * The uncertainty is the line's slope error from the remaining phase scatter; scatter with a memory (an unsteady
 * hand) counts as fewer independent blocks: n_eff = n / (1 + 2 Σ ρ_k).
 * @param segment  at least 30 values
 * @param coarseHz  the frequency, known to within 0.6 Hz
 * @param noiseMeanSquare  mean |noise|² of one value, for the blocks' weights
 * @returns null where no block stands out of the noise
 * @example
 * const turnRad = (k) => (2 * Math.PI * 0.3 * k) / 100;
 * const re = Float64Array.from({ length: 300 }, (_, k) => Math.cos(turnRad(k)));
 * const im = Float64Array.from({ length: 300 }, (_, k) => Math.sin(turnRad(k)));
 * fitPhaseRegression({ re, im, from: 0, to: 300, rateHz: 100 }, 0.2, 1e-6).offsetHz // → 0.300000
 */
export function fitPhaseRegression(
  segment: ToneSegment,
  coarseHz: number,
  noiseMeanSquare: number,
): FrequencyEstimate | null {
  const blocks = blockPhases(segment, coarseHz, noiseMeanSquare);
  let total = 0;
  for (const weight of blocks.weight) total += weight;
  if (!(total > 0)) return null;
  let line: RobustLine = {
    slopeHz: likeliestSlopeHz(blocks),
    moveHz: Infinity,
    robust: blocks.weight,
    residualRad: new Float64Array(blocks.count),
  };
  for (let round = 0; round < MOST_ROUNDS && Math.abs(line.moveHz) >= STILL_HZ; round += 1) {
    line = reweighted(blocks, line);
  }
  return estimateOf(blocks, line, coarseHz, total);
}

/** One round of iteratively reweighted least squares: the line through what has kept its weight, then new weights. */
function reweighted(blocks: BlockPhases, { slopeHz, robust: weights }: RobustLine): RobustLine {
  const { count, blockS, phaseRad, weight } = blocks;
  const sum = sumAlongLine(weightedPhasors(blocks, weights), slopeHz, blockS);
  const angle = Math.atan2(sum.im, sum.re);
  const residualRad = new Float64Array(count);
  const sizes = new Float64Array(count);
  let [sw, st, stt, sr, srt] = [0, 0, 0, 0, 0];
  for (let b = 0; b < count; b += 1) {
    const t = (b + 0.5) * blockS;
    const r = wrap(phaseRad[b] - angle - 2 * Math.PI * slopeHz * t);
    residualRad[b] = r;
    sizes[b] = Math.abs(r);
    const w = weights[b];
    sw += w;
    st += w * t;
    stt += w * t * t;
    sr += w * r;
    srt += w * r * t;
  }
  const scale = Math.max(0.15, 1.5 * weightedMedian(sizes, weight.slice()));
  // Biweight at four scales (Beaton & Tukey 1974, Technometrics 16, 147).
  const robust = new Float64Array(count);
  for (let b = 0; b < count; b += 1) {
    const u = residualRad[b] / (4 * scale);
    const rest = Math.abs(u) < 1 ? 1 - u * u : 0;
    robust[b] = weight[b] * rest * rest;
  }
  const det = sw * stt - st * st;
  const moveHz = det > 0 ? (sw * srt - st * sr) / det / (2 * Math.PI) : 0;
  return { slopeHz: slopeHz + moveHz, moveHz, robust, residualRad };
}

/** @param total  weight of all blocks before any lost theirs */
function estimateOf(
  blocks: BlockPhases,
  { slopeHz, robust, residualRad }: RobustLine,
  coarseHz: number,
  total: number,
): FrequencyEstimate | null {
  const { count, blockS } = blocks;
  let [sw, sww, st, stt, srr] = [0, 0, 0, 0, 0];
  for (let b = 0; b < count; b += 1) {
    const w = robust[b];
    const t = (b + 0.5) * blockS;
    sw += w;
    sww += w * w;
    st += w * t;
    stt += w * t * t;
    srr += w * residualRad[b] ** 2;
  }
  if (!(sw > 0)) return null;
  const spread = stt / sw - (st / sw) ** 2;
  const variance = srr / sw;
  const effective = (sw * sw) / sww / memory(residualRad, robust);
  const sum = sumAlongLine(weightedPhasors(blocks, robust), slopeHz, blockS);
  return {
    offsetHz: coarseHz + slopeHz,
    standardUncertaintyHz: Math.sqrt(variance / Math.max(1, effective - 2) / spread) / (2 * Math.PI),
    coherence: Math.sqrt(sum.re * sum.re + sum.im * sum.im) / total,
  };
}

/** 1 + 2 Σ ρ_k over the first positive run of autocorrelations: how many blocks make one independent one. */
function memory(residualRad: Float64Array, weight: Float64Array): number {
  let zero = 0;
  for (let b = 0; b < residualRad.length; b += 1) zero += weight[b] ** 2 * residualRad[b] ** 2;
  if (!(zero > 0)) return 1;
  let factor = 1;
  for (let lag = 1; lag < Math.min(40, residualRad.length >> 1); lag += 1) {
    let shared = 0;
    for (let b = lag; b < residualRad.length; b += 1) {
      shared += weight[b] * weight[b - lag] * residualRad[b] * residualRad[b - lag];
    }
    const rho = shared / zero;
    if (rho < 0.05) break;
    factor += 2 * rho;
  }
  return factor;
}

const wrap = (angle: number): number => angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
