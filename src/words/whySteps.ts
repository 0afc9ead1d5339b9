import { LOW_FREQUENCY_END_RATIO } from '../air/endCorrection.ts';
import type { KnownEnd, WorkingStep } from '../solver/workingStep.ts';
import { laterWords } from './inUse.ts';
import { centimetres, fixed, hertz, significant } from './numbers.ts';

/** Written to a tenth of a millimetre. */
const SMALLEST_SEEN_M = 5e-5;
/** k for 95 % of a normal distribution (JCGM 100:2008, table G.1). */
const NORMAL_COVERAGE_FACTOR = 1.96;

/** Why a step is done, in a sentence or two with its own numbers and a source; null where nobody asks. */
export function whyWords(step: WorkingStep): string | null {
  const said = laterWords.workingWhy;
  switch (step.kind) {
    case 'half-wave-from-difference':
      return said.difference[step.ends](centimetres(step.farLengthM), centimetres(step.nearLengthM));
    case 'end-correction':
      return isSeen(step.endCorrectionM)
        ? `${beyondRim(step.endCorrectionM, step.radiusM)} ${theoryOfEnds()}`
        : `${said.noEnd} ${theoryOfEnds()}`;
    case 'column-length':
      return [
        ...(isSeen(step.endCorrectionM) ? [beyondRim(step.endCorrectionM, step.radiusM)] : []),
        ...(step.known === null ? [] : [said.endKnown(knownEndWords(step.known))]),
        theoryOfEnds(),
      ].join(' ');
    case 'fit-of-all-marks':
      return step.known === null ? null : mouthWords(step.known, step);
    case 'free-air':
      return said.walls(
        significant(step.layerM * 1000, 2),
        hertz(step.frequencyHz),
        fixed(step.radiusM * 1000, 1),
        significant(100 * step.wallFraction, 2),
      );
    case 'place':
      return step.locatedBy === 'centre' ? null : said.loudest(significant(step.placeM * 1000, 2));
    case 'standard-uncertainty': {
      const sumMps = step.contributionsMps.reduce((sum, mps) => sum + mps, 0);
      return step.contributionsMps.length < 2 ? null : said.squares(significant(sumMps, 2));
    }
    case 'expanded-uncertainty':
      return said.coverage(
        fixed(step.effectiveDegreesOfFreedom, 0),
        fixed(step.coverageFactor, 2),
        fixed(NORMAL_COVERAGE_FACTOR, 2),
      );
    case 'theory':
      return said.warmth(fixed(step.speedMps / (2 * (273.15 + step.temperatureC)), 2));
    default:
      return null;
  }
}

function theoryOfEnds(): string {
  const { unflanged, flanged } = LOW_FREQUENCY_END_RATIO;
  return laterWords.workingWhy.theoryOfEnds(fixed(unflanged, 2), fixed(flanged, 2));
}

/** Whether an end correction is above zero as far as it is written. */
function isSeen(endCorrectionM: number): boolean {
  return endCorrectionM >= SMALLEST_SEEN_M;
}

/** Why there is an end correction. */
function beyondRim(endCorrectionM: number, radiusM: number | null): string {
  const said = laterWords.workingWhy;
  const endMm = fixed(endCorrectionM * 1000, 1);
  return radiusM === null
    ? said.beyondRim(endMm)
    : said.beyondRimOfRadius(endMm, fixed(endCorrectionM / radiusM, 2));
}

/** What the mouth's own value did to the result. */
function mouthWords(
  known: KnownEnd,
  { ofMarks, endCorrectionM }: Extract<WorkingStep, { kind: 'fit-of-all-marks' }>,
): string {
  const said = laterWords.workingWhy;
  if (known.expected === 0 && !isSeen(endCorrectionM)) return said.ideal;
  const endMm = fixed(endCorrectionM * 1000, 1);
  const outcome =
    ofMarks === null
      ? said.endOfMouth(endMm)
      : said.endOfBoth(
          fixed(ofMarks.endCorrectionM * 1000, 1),
          significant(ofMarks.standardUncertaintyM * 1000, 2),
          endMm,
        );
  return `${outcome} ${said.mouthSources}`;
}

/** What was known of a mouth beforehand. */
export function knownEndWords({ isRelative, expected, standardUncertainty }: KnownEnd): string {
  if (expected === 0) return laterWords.workingWhy.noEndCorrection;
  return isRelative
    ? laterWords.workingWhy.inRadii(fixed(expected, 2), fixed(standardUncertainty, 2))
    : `${fixed(1000 * expected, 1)} ± ${fixed(1000 * standardUncertainty, 1)} mm`;
}
