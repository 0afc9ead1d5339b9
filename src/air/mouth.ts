import { LOW_FREQUENCY_END_RATIO } from './endCorrection.ts';

/** What the open end looks like, as far as it decides the end correction. */
export type MouthShape = (typeof MOUTH_SHAPES)[number];

export const MOUTH_SHAPES = ['thin-rim', 'thick-rim', 'flange', 'obstructed', 'ideal'] as const;

/** End correction of one open end over the tube's inside radius at low frequency. */
export interface EndRatioKnowledge {
  readonly ratio: number;
  readonly standardUncertainty: number;
}

/**
 * What is known of each mouth.
 * - `thin-rim`: 0.6133 (Levine & Schwinger 1948, Phys. Rev. 73, 383); a real rim adds up to 0.05.
 * - `thick-rim`: wall of a tenth to a half of the radius: 0.65 to 0.74 by the interpolation of Dalmont, Nederveen &
 *   Joly 2001, J. Sound Vib. 244, 505.
 * - `flange`: 0.8216 (Nomura 1960) for a plate without end; less for a small one.
 * - `obstructed`: a hand, a thick fork or a stand close to a thin rim. A judgement.
 * - `ideal`: none at all, as in exercises.
 */
const KNOWN: Readonly<Record<MouthShape, EndRatioKnowledge>> = {
  'thin-rim': { ratio: LOW_FREQUENCY_END_RATIO.unflanged, standardUncertainty: 0.03 },
  'thick-rim': { ratio: 0.69, standardUncertainty: 0.04 },
  flange: { ratio: LOW_FREQUENCY_END_RATIO.flanged, standardUncertainty: 0.03 },
  obstructed: { ratio: 0.76, standardUncertainty: 0.08 },
  ideal: { ratio: 0, standardUncertainty: 1e-4 },
};

/** A mouth that nobody described may be any of them: from a thin rim to a flange. A judgement. */
const UNKNOWN: EndRatioKnowledge = { ratio: 0.66, standardUncertainty: 0.11 };

/**
 * End correction of one open end where no diameter is known, m: what tubes 20 to 50 mm wide have. Common practice, no
 * source.
 */
export const UNKNOWN_END_M = { expected: 0.011, standardUncertainty: 0.0035 } as const;

/**
 * End correction over radius that a mouth has, before anything was measured.
 * @param mouth  null: not described
 * @example
 * endRatioOfMouth('flange').ratio // → 0.8216
 */
export function endRatioOfMouth(mouth: MouthShape | null): EndRatioKnowledge {
  return mouth === null ? UNKNOWN : KNOWN[mouth];
}
