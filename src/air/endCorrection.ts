import { requireInRange, requirePositive } from '../numeric/requireInRange.ts';

/** How the open end ends: a thin rim in free space, or a wide flat plate around it. */
export type EndShape = 'unflanged' | 'flanged';

export interface EndCorrection {
  readonly endCorrectionM: number;
  readonly standardUncertaintyM: number;
}

/** End correction over radius as ka → 0. Levine & Schwinger 1948, Phys. Rev. 73, 383; flanged Nomura 1960. */
export const LOW_FREQUENCY_END_RATIO = { unflanged: 0.6133, flanged: 0.8216 } as const;

/** Highest ka at which these formulas hold; wider tubes carry more than plane waves soon after. */
export const HIGHEST_KA = 1.5;

/**
 * Standard uncertainty of theory's end correction over radius. A judgement: a rim of usual thickness adds up to
 * 0.05, a fork or a hand near the mouth about as much, and a bevel takes off.
 */
export const END_RATIO_STANDARD_UNCERTAINTY = 0.05;

/**
 * End correction over radius at an open end of a round tube.
 * @param waveNumberTimesRadius  ka, 0..HIGHEST_KA
 * @throws RangeError outside of that range
 * @see unflanged: Dalmont, Nederveen & Joly 2001, J. Sound Vib. 244, 505, after Levine & Schwinger (within 0.35 % of
 *   their integral); flanged: Norris & Sheng 1989, J. Sound Vib. 135, 85
 * @example
 * endCorrectionRatio(0) // → 0.6133
 */
export function endCorrectionRatio(waveNumberTimesRadius: number, shape: EndShape = 'unflanged'): number {
  const z = waveNumberTimesRadius;
  requireInRange('waveNumberTimesRadius', z, 0, HIGHEST_KA);
  if (shape === 'flanged') return 0.8216 / (1 + (0.77 * z) ** 2 / (1 + 0.77 * z));
  return 0.6133 * ((1 + 0.044 * z * z) / (1 + 0.19 * z * z) - 0.02 * Math.sin(2 * z) ** 2);
}

/**
 * Size of the pressure reflected at the open end, 0..1.
 * @param waveNumberTimesRadius  ka, 0..HIGHEST_KA
 * @throws RangeError outside of that range
 * @see as for endCorrectionRatio
 * @example
 * reflectionSize(0.5) // → 0.896
 */
export function reflectionSize(waveNumberTimesRadius: number, shape: EndShape = 'unflanged'): number {
  const z = waveNumberTimesRadius;
  requireInRange('waveNumberTimesRadius', z, 0, HIGHEST_KA);
  if (shape === 'flanged') return (1 + 0.323 * z - 0.077 * z * z) / (1 + 0.323 * z + 0.923 * z * z);
  return (1 + 0.2 * z - 0.084 * z * z) / (1 + 0.2 * z + 0.416 * z * z);
}

/**
 * End correction of one open end, with what theory can't know about a real mouth.
 * @param radiusM  inside radius, > 0
 * @param frequencyHz  > 0; ka may be HIGHEST_KA at most
 * @param speedMps  > 0
 * @throws RangeError naming the argument, its range and the value
 * @example
 * endCorrection(0.0175, 512, 343).endCorrectionM // → 0.0107
 */
export function endCorrection(
  radiusM: number,
  frequencyHz: number,
  speedMps: number,
  shape: EndShape = 'unflanged',
): EndCorrection {
  requirePositive('radiusM', radiusM);
  requirePositive('frequencyHz', frequencyHz);
  requirePositive('speedMps', speedMps);
  const ratio = endCorrectionRatio((2 * Math.PI * frequencyHz * radiusM) / speedMps, shape);
  return {
    endCorrectionM: ratio * radiusM,
    standardUncertaintyM: END_RATIO_STANDARD_UNCERTAINTY * radiusM,
  };
}
