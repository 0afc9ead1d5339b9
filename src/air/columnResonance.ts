import { reflectionSize } from './endCorrection.ts';
import { requirePositive } from '../numeric/requireInRange.ts';

export interface ColumnResonance {
  /** n = 1, 2, 3… */
  readonly order: number;
  readonly ends: 'closed' | 'open';
  /** Speed of the wave in the tube, walls' slowing included, > 0. */
  readonly speedMps: number;
  readonly frequencyHz: number;
  /** Of one open end, >= 0. */
  readonly endCorrectionM: number;
  /** Of the other open end where it differs. */
  readonly otherEndCorrectionM?: number;
}

/**
 * Half wavelengths between the ends at the n-th resonance: n for a column open at both ends, n − ½ for a closed one.
 * @param order  n = 1, 2, 3…
 * @throws RangeError unless it is a whole number above 0
 * @example
 * halfWaves(2, 'closed') // → 1.5
 * halfWaves(2, 'open') // → 2
 */
export function halfWaves(order: number, ends: 'closed' | 'open'): number {
  if (!Number.isInteger(order) || order < 1) throw new RangeError(`order must be 1, 2, 3…, got ${order}`);
  return ends === 'closed' ? order - 0.5 : order;
}

/**
 * Length of a column at its n-th resonance: closed (2n − 1)·v/4f − e, open n·v/2f − 2e.
 * @returns metres; may be below 0 where the end correction is longer than the wave allows
 * @throws RangeError naming the argument, its range and the value
 * @see any textbook of acoustics, e.g. OpenStax University Physics 1, section 17.4
 * @example
 * const column = { order: 1, ends: 'closed', speedMps: 344, frequencyHz: 128, endCorrectionM: 0 };
 * resonantLengthM(column) // → 0.672
 */
export function resonantLengthM(resonance: ColumnResonance): number {
  const { order, ends, speedMps, frequencyHz, endCorrectionM } = resonance;
  requirePositive('speedMps', speedMps);
  requirePositive('frequencyHz', frequencyHz);
  const corrections =
    ends === 'closed' ? endCorrectionM : endCorrectionM + (resonance.otherEndCorrectionM ?? endCorrectionM);
  return (halfWaves(order, ends) * speedMps) / (2 * frequencyHz) - corrections;
}

export interface ColumnDamping {
  readonly lengthM: number;
  readonly ends: 'closed' | 'open';
  readonly radiusM: number;
  readonly frequencyHz: number;
  readonly speedMps: number;
  readonly attenuationNpPerM: number;
}

/**
 * Full width at half power of a resonance on the length's scale, [2αL − ln|R|·(open ends)]/k. For small ka,
 * −ln|R| = (ka)²/2, which is the usual form.
 * @returns metres
 * @throws RangeError naming the argument, its range and the value
 * @see Fletcher & Rossing 1998, The Physics of Musical Instruments, ch. 8; Levine & Schwinger 1948 for |R|
 * @example
 * const { attenuationNpPerM } = wallLoss(0.0175, 512, 20);
 * const column = { lengthM: 0.158, ends: 'closed', radiusM: 0.0175, frequencyHz: 512, speedMps: 342, attenuationNpPerM };
 * resonanceWidthM(column) // → 0.0027
 */
export function resonanceWidthM(column: ColumnDamping): number {
  const { lengthM, ends, radiusM, frequencyHz, speedMps, attenuationNpPerM } = column;
  requirePositive('lengthM', lengthM);
  requirePositive('speedMps', speedMps);
  requirePositive('frequencyHz', frequencyHz);
  const waveNumber = (2 * Math.PI * frequencyHz) / speedMps;
  const radiation = -Math.log(reflectionSize(waveNumber * radiusM)) * (ends === 'open' ? 2 : 1);
  return (2 * attenuationNpPerM * lengthM + radiation) / waveNumber;
}

/**
 * Time constant with which the sound in a column builds up and dies, 2Q/ω with Q the column's length over its width.
 * @returns seconds
 * @throws RangeError naming the argument, its range and the value
 * @example
 * const { attenuationNpPerM } = wallLoss(0.0175, 512, 20);
 * const column = { lengthM: 0.158, ends: 'closed', radiusM: 0.0175, frequencyHz: 512, speedMps: 342, attenuationNpPerM };
 * ringUpTimeS(column) // → 0.04
 */
export function ringUpTimeS(column: ColumnDamping): number {
  const quality = column.lengthM / resonanceWidthM(column);
  return quality / (Math.PI * column.frequencyHz);
}
