import type { BlockPhases } from './blockPhases.ts';
import { rotatedSum, sumAlongLine, weightedPhasors } from './phasorSum.ts';
import type { Phasors } from './phasorSum.ts';

/** How far the search goes from the coarse frequency, Hz. */
const REACH_HZ = 0.6;
/** Stretches within which even a fork that goes to and fro keeps its phase, mostly. */
const SHORT_S = 0.8;
/** A stretch of 0.8 s answers over ±1 Hz: its power is a smooth curve on this grid. */
const SHORT_GRID_HZ = 0.1;
const SHORT_STEPS = Math.round(REACH_HZ / SHORT_GRID_HZ);
/** How strongly the short stretches' power counts. */
const SHORT_EXPONENT = 12;

/**
 * Slope of the line through the phases that has the largest weighted phasor sum, on a grid finer than half a turn over
 * the segment: φ = α + 2πνt by maximising Σ w cos(φ − α − 2πνt), which needs no unwrapping.
 * @returns Hz beside the coarse frequency
 * @example
 * const turnRad = (k) => (2 * Math.PI * 0.3 * k) / 100;
 * const re = Float64Array.from({ length: 300 }, (_, k) => Math.cos(turnRad(k)));
 * const im = Float64Array.from({ length: 300 }, (_, k) => Math.sin(turnRad(k)));
 * const blocks = blockPhases({ re, im, from: 0, to: 300, rateHz: 100 }, 0.2, 1e-6);
 * likeliestSlopeHz(blocks).toFixed(1) // → '0.1'
 */
export function likeliestSlopeHz(blocks: BlockPhases): number {
  const { blockS, count, weight } = blocks;
  const gridHz = 1 / (6 * count * blockS);
  const phasors = weightedPhasors(blocks, weight);
  const short = shortStretchPower(phasors, blockS);
  const highest = Math.max(...short) || 1;
  let slopeHz = 0;
  let bestValue = -1;
  for (let hz = -REACH_HZ; hz <= REACH_HZ; hz += gridHz) {
    const { re, im } = sumAlongLine(phasors, hz, blockS);
    const value = Math.sqrt(re * re + im * im) * (powerBetween(short, hz) / highest) ** SHORT_EXPONENT;
    if (value > bestValue) {
      bestValue = value;
      slopeHz = hz;
    }
  }
  return slopeHz;
}

/**
 * Power of the tone in short stretches, summed without regard to the phase from one to the next, as a function of the
 * slope. A fork that goes to and fro turns the phase again and again: over the whole segment a modulation sideband, a
 * few tenths of a hertz off, can then outweigh the fork itself; within a second it can't.
 * @returns one power for each slope of the grid, from −REACH_HZ up
 */
function shortStretchPower(phasors: Phasors, blockS: number): Float64Array {
  const count = phasors.re.length;
  const length = Math.min(count, Math.max(3, Math.round(SHORT_S / blockS)));
  const hop = Math.max(1, length >> 1);
  const powers = new Float64Array(2 * SHORT_STEPS + 1);
  for (let i = -SHORT_STEPS; i <= SHORT_STEPS; i += 1) {
    const turnRad = -2 * Math.PI * i * SHORT_GRID_HZ * blockS;
    let power = 0;
    for (let from = 0; from + length <= count; from += hop) {
      const { re, im } = rotatedSum(phasors, { from, to: from + length, startRad: 0, turnRad });
      power += re * re + im * im;
    }
    powers[i + SHORT_STEPS] = power;
  }
  return powers;
}

/** Between the grid's places: a parabola through the three nearest. */
function powerBetween(powers: Float64Array, hz: number): number {
  const at = hz / SHORT_GRID_HZ + SHORT_STEPS;
  const middle = Math.max(1, Math.min(2 * SHORT_STEPS - 1, Math.round(at)));
  const off = at - middle;
  const low = powers[middle - 1];
  const here = powers[middle];
  const high = powers[middle + 1];
  return Math.max(0, here + (off / 2) * (high - low) + (off * off * (low - 2 * here + high)) / 2);
}
