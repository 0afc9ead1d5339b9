import { LOW_FREQUENCY_END_RATIO } from '../air/endCorrection.ts';
import type { KnownEnd, WorkingStep } from '../solver/workingStep.ts';
import { centimetres, fixed, hertz, significant } from './numbers.ts';

const thinRadii = (): string => fixed(LOW_FREQUENCY_END_RATIO.unflanged, 2);
/** Written to a tenth of a millimetre. */
const SMALLEST_SEEN_M = 5e-5;
const flangedRadii = (): string => fixed(LOW_FREQUENCY_END_RATIO.flanged, 2);

/** Why a step is done, in a sentence or two with its own numbers and a source; null where nobody asks. */
export function whyWords(step: WorkingStep): string | null {
  switch (step.kind) {
    case 'half-wave-from-difference': {
      const short = step.ends === 'closed' ? 'e' : '2e';
      return `Both columns are ${short} shorter than their waves, so ${short} drops out of ${centimetres(step.farLengthM)} cm − ${centimetres(step.nearLengthM)} cm: no mouth can spoil λ. (Resonant lengths: OpenStax University Physics 1, section 17.4.)`;
    }
    case 'end-correction':
      return isSeen(step.endCorrectionM)
        ? `${beyondRim(step.endCorrectionM, step.radiusM)} ${theory()}`
        : `It can hardly be zero or less: one of the two lengths is misread, or its order is another. ${theory()}`;
    case 'column-length': {
      const why = isSeen(step.endCorrectionM) ? `${beyondRim(step.endCorrectionM, step.radiusM)} ` : '';
      const from =
        step.known === null
          ? ''
          : `One length can’t tell e from λ, so e is taken as it is known of this mouth: ${knownEndWords(step.known)}. `;
      return `${why}${from}${theory()}`;
    }
    case 'fit-of-all-marks':
      return step.known === null ? null : mouthWords(step.known, step);
    case 'free-air':
      return `At the wall air sticks and gives its heat away, in a layer of ${significant(step.layerM * 1000, 2)} mm at ${hertz(step.frequencyHz)} Hz. In a tube of ${fixed(step.radiusM * 1000, 1)} mm radius that takes ${significant(100 * step.wallFraction, 2)} % of the speed; a narrower one takes more. (Zwikker & Kosten 1949, ch. II; Keefe 1984.)`;
    case 'place':
      return step.locatedBy === 'centre'
        ? null
        : `The microphone hears the fork beside the column, and their sum is loudest where the two are nearest in step, not where the column swings most: here ${significant(step.placeM * 1000, 2)} mm beside it, as a standard uncertainty. (Width of a resonance: Fletcher & Rossing 1998, ch. 8.)`;
    case 'standard-uncertainty': {
      const sumMps = step.contributionsMps.reduce((sum, mps) => sum + mps, 0);
      return step.contributionsMps.length < 2
        ? null
        : `Independent errors rarely all go one way, so their squares add: not to ${significant(sumMps, 2)} m/s, as they would by themselves. (JCGM 100:2008, 5.1.2.)`;
    }
    case 'expanded-uncertainty':
      return `u holds about two of three cases. For 95 of 100, ν = ${fixed(step.effectiveDegreesOfFreedom, 0)} asks for k = ${fixed(step.coverageFactor, 2)}; it would be 1.96 if u were known exactly. (JCGM 100:2008, G.3 and G.4.)`;
    case 'theory': {
      const perDegree = step.speedMps / (2 * (273.15 + step.temperatureC));
      return `Warm molecules are faster, and they carry the sound: c grows with the root of the absolute temperature, here by ${fixed(perDegree, 2)} m/s a degree. (OpenStax University Physics 1, section 17.2.)`;
    }
    default:
      return null;
  }
}

const theory = (): string =>
  `Theory has ${thinRadii()} radii for a thin rim (Levine & Schwinger 1948) and ${flangedRadii()} with a flange (Nomura 1960).`;

/** Whether an end correction is above zero as far as it is written. */
function isSeen(endCorrectionM: number): boolean {
  return endCorrectionM >= SMALLEST_SEEN_M;
}

/** Why there is an end correction. */
function beyondRim(endCorrectionM: number, radiusM: number | null): string {
  const ratio = radiusM === null ? '' : `, ${fixed(endCorrectionM / radiusM, 2)} of its radius`;
  return `The air before the mouth swings along, so the wave turns round ${fixed(endCorrectionM * 1000, 1)} mm beyond the rim of this tube${ratio}.`;
}

/** What the mouth's own value did to the result. */
function mouthWords(
  known: KnownEnd,
  { ofMarks, endCorrectionM }: Extract<WorkingStep, { kind: 'fit-of-all-marks' }>,
): string {
  if (known.expected === 0 && !isSeen(endCorrectionM))
    return 'The mouth is said to be ideal, so e is held at zero.';
  const outcome = `e = ${fixed(endCorrectionM * 1000, 1)} mm`;
  const alone =
    ofMarks === null
      ? `The marks alone don’t give e; what is known of the mouth does, and ${outcome}.`
      : `The marks alone say e = ${fixed(ofMarks.endCorrectionM * 1000, 1)} ± ${significant(ofMarks.standardUncertaintyM * 1000, 2)} mm. What is known of the mouth is one more value beside them, each counts by its uncertainty, and ${outcome}.`;
  return `${alone} (Mouths: Levine & Schwinger 1948; Nomura 1960; Dalmont, Nederveen & Joly 2001.)`;
}

/** What was known of a mouth beforehand. */
export function knownEndWords({ isRelative, expected, standardUncertainty }: KnownEnd): string {
  if (expected === 0) return 'no end correction, as in exercises';
  return isRelative
    ? `${fixed(expected, 2)} ± ${fixed(standardUncertainty, 2)} radii`
    : `${fixed(1000 * expected, 1)} ± ${fixed(1000 * standardUncertainty, 1)} mm`;
}
