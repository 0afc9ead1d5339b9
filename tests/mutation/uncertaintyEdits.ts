import { edit } from './edit.ts';
import type { Edit } from './edit.ts';

/** Single edits of what is stated of each quantity, and of how it becomes an interval. */
export const UNCERTAINTY_EDITS: readonly Edit[] = [
  // The rule.
  edit(
    'solver/prepareMarks.ts',
    'zeroStandardUncertaintyM: 0.0005,',
    'zeroStandardUncertaintyM: 0,',
    'no error of the rule’s zero',
  ),
  edit(
    'solver/prepareMarks.ts',
    'scaleStandardUncertainty: 2e-4 };',
    'scaleStandardUncertainty: 0 };',
    'no error of the rule’s scale',
  ),
  edit(
    'solver/weightedFit.ts',
    'with0(rows.map(() => rule.zeroStandardUncertaintyM)),',
    'with0(rows.map((row) => row.endShape * rule.zeroStandardUncertaintyM)),',
    'the rule’s zero scaled by the mouth',
  ),
  edit(
    'solver/weightedFit.ts',
    '(columnsM[i] - row.endShape * known.expected) * rule.scaleStandardUncertainty',
    'columnsM[i] * rule.scaleStandardUncertainty * 2',
    'the rule’s scale twice as uncertain',
  ),
  // Forks and readings.
  edit(
    'marks/usualUncertainties.ts',
    'export const STAMP_TOLERANCE = 0.005;',
    'export const STAMP_TOLERANCE = 0.002;',
    'stamps good to 0.2 %',
  ),
  edit(
    'marks/usualUncertainties.ts',
    '(STAMP_TOLERANCE * nominalHz) / Math.sqrt(3)',
    'STAMP_TOLERANCE * nominalHz',
    'a rectangle’s half width as its standard deviation',
  ),
  edit(
    'marks/usualUncertainties.ts',
    'export const USUAL_LENGTH_STANDARD_UNCERTAINTY_M = 0.001;',
    'export const USUAL_LENGTH_STANDARD_UNCERTAINTY_M = 0.0005;',
    'lengths read to half a millimetre',
  ),
  edit(
    'marks/usualUncertainties.ts',
    'export const FOUND_BY_EAR_STANDARD_UNCERTAINTY_M = 0.0025;',
    'export const FOUND_BY_EAR_STANDARD_UNCERTAINTY_M = 0.001;',
    'places found by ear to a millimetre',
  ),
  edit(
    'marks/usualUncertainties.ts',
    'export const USUAL_CENTRE_STANDARD_UNCERTAINTY_HALF_WIDTHS = 0.15;',
    'export const USUAL_CENTRE_STANDARD_UNCERTAINTY_HALF_WIDTHS = 0.05;',
    'shown centres three times as good',
  ),
  edit(
    'marks/usualUncertainties.ts',
    'export const USUAL_FIRST_RISE_DB = 10;',
    'export const USUAL_FIRST_RISE_DB = 20;',
    'loudest places nearer to the resonance',
  ),
  edit('solver/prepareMarks.ts', 'bracketM ** 2 / 12', 'bracketM ** 2 / 48', 'a bracket half as uncertain'),
  edit('solver/prepareMarks.ts', '(mark.copies ?? 1) *\n', '1 *\n', 'copies weigh as readings of their own'),
  edit(
    'solver/prepareMarks.ts',
    'setupNumber(JSON.stringify([mark.forkKey, mark.place, mark.ends]))',
    'setupNumber(JSON.stringify([mark.key]))',
    'loudest places independent from mark to mark',
  ),
  edit('solver/alikeForks.ts', '2 * Math.hypot(', '0.01 * Math.hypot(', '512 and 511.8 Hz are two forks'),
  // Walls and mouth.
  edit(
    'solver/weightedFit.ts',
    'const WALL_UNCERTAINTY = 0.1;',
    'const WALL_UNCERTAINTY = 0.01;',
    'walls known to a hundredth',
  ),
  edit(
    'solver/weightedFit.ts',
    'const UNKNOWN_WALL_UNCERTAINTY = 0.85;',
    'const UNKNOWN_WALL_UNCERTAINTY = 0.1;',
    'walls of an unknown tube known',
  ),
  edit('solver/prepareMarks.ts', 'ratio * (1 - wallFraction)', 'ratio', 'walls slow nothing'),
  edit(
    'air/mouth.ts',
    '{ ratio: 0.66, standardUncertainty: 0.11 }',
    '{ ratio: 0.66, standardUncertainty: 0.05 }',
    'an unknown mouth as narrow as a thin rim',
  ),
  edit(
    'air/mouth.ts',
    '{ ratio: 0.66, standardUncertainty: 0.11 }',
    '{ ratio: 0.6133, standardUncertainty: 0.11 }',
    'an unknown mouth begins at the thin rim',
  ),
  edit(
    'air/mouth.ts',
    'ratio: LOW_FREQUENCY_END_RATIO.unflanged, standardUncertainty: 0.03',
    'ratio: LOW_FREQUENCY_END_RATIO.unflanged, standardUncertainty: 0.12',
    'a thin rim as uncertain as any mouth',
  ),
  edit(
    'air/mouth.ts',
    '{ ratio: 0.69, standardUncertainty: 0.04 }',
    '{ ratio: 0.62, standardUncertainty: 0.04 }',
    'a thick rim like a thin one',
  ),
  edit(
    'air/mouth.ts',
    '{ ratio: 0.76, standardUncertainty: 0.08 }',
    '{ ratio: 0.76, standardUncertainty: 0.02 }',
    'a hand near the mouth known well',
  ),
  edit(
    'air/endCorrection.ts',
    '0.02 * Math.sin(2 * z) ** 2',
    '0.2 * Math.sin(2 * z) ** 2',
    'the mouth’s fall with the pitch',
  ),
  edit(
    'air/mouth.ts',
    'expected: 0.011, standardUncertainty: 0.0035',
    'expected: 0, standardUncertainty: 0.0035',
    'an unknown tube without a mouth',
  ),
  edit(
    'air/mouth.ts',
    'expected: 0.011, standardUncertainty: 0.0035',
    'expected: 0.011, standardUncertainty: 0.001',
    'an unknown tube’s mouth known to a millimetre',
  ),
  edit(
    'solver/fitMarks.ts',
    '- 4 * (usual ** 2 + own.standardUncertainty ** 2)',
    '- 400 * (usual ** 2 + own.standardUncertainty ** 2)',
    'marks that contradict the mouth are bent to it',
  ),
  edit(
    'solver/fitMarks.ts',
    'const FREE_END_LIMIT = 5;',
    'const FREE_END_LIMIT = 0.5;',
    'marks without a diameter never free',
  ),
  edit(
    'solver/fitMarks.ts',
    "contribution('end', null, byEnd, JUDGED_DEGREES)",
    "contribution('end', null, 0, JUDGED_DEGREES)",
    'the mouth adds nothing to the budget',
  ),
  edit(
    'solver/fitMarks.ts',
    'correlation: covariance / Math.sqrt(speedVariance * endVariance)',
    'correlation: -covariance / Math.sqrt(speedVariance * endVariance)',
    'r(v, e) with the wrong sign',
  ),
  // Degrees of freedom and coverage.
  edit(
    'solver/weightedFit.ts',
    'export const STATED_DEGREES = 50;',
    'export const STATED_DEGREES = 10;',
    'stated uncertainties known to 22 %',
  ),
  edit(
    'solver/weightedFit.ts',
    'export const JUDGED_DEGREES = 20;',
    'export const JUDGED_DEGREES = 200;',
    'judgements known to 5 %',
  ),
  edit(
    'solver/weightedFit.ts',
    'const STATED_READING: ReadingKnowledge = { degrees: 1, lowestFactor: 1 };',
    'const STATED_READING: ReadingKnowledge = { degrees: 1, lowestFactor: 0.2 };',
    'luck narrows a stated reading',
  ),
  edit(
    'solver/weightedFit.ts',
    'const STATED_READING: ReadingKnowledge = { degrees: 1, lowestFactor: 1 };',
    'const STATED_READING: ReadingKnowledge = { degrees: 1000, lowestFactor: 1 };',
    'scatter widens nothing',
  ),
  edit(
    'solver/weightedFit.ts',
    'const ASSUMED_READING: ReadingKnowledge = { degrees: 5, lowestFactor: 0.2 };',
    'const ASSUMED_READING: ReadingKnowledge = { degrees: 500, lowestFactor: 0.2 };',
    'an assumed reading that the marks can’t correct',
  ),
  edit(
    'solver/weightedFit.ts',
    'stated.fit.degreesOfFreedom - surplusCopies(rows)',
    'stated.fit.degreesOfFreedom',
    'copies count as degrees of freedom',
  ),
  edit(
    'solver/weightedFit.ts',
    '(variance - 1) ** 2 / Math.max(degreesOfFreedom, 1)',
    '0 / Math.max(degreesOfFreedom, 1)',
    'scatter of few residuals known like a stated one',
  ),
  edit(
    'solver/effectiveDegreesOfFreedom.ts',
    'u ** 4 / degreesOfFreedom',
    'u ** 2 / degreesOfFreedom',
    'Welch and Satterthwaite with squares',
  ),
  edit(
    'numeric/studentT.ts',
    'coverageFactor(degreesOfFreedom: number, level = 0.95)',
    'coverageFactor(degreesOfFreedom: number, level = 0.9)',
    'intervals of 90 %',
  ),
  edit(
    'solver/solve.ts',
    'expandedUncertaintyMps: factor * standardUncertaintyMps,',
    'expandedUncertaintyMps: 2 * standardUncertaintyMps,',
    'k = 2 whatever the degrees of freedom',
  ),
  edit(
    'solver/repeatability.ts',
    'degreesOfFreedom += lengths.length - 1;',
    'degreesOfFreedom += lengths.length;',
    'pure error with n for n − 1',
  ),
];
