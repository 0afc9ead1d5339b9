import { markLengthM } from '../../marks/mark.ts';
import type { Mark } from '../../marks/mark.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import { isOfRealColumn } from './practiceReadings.ts';
import { isReadThere, toleranceM } from './practiceResonances.ts';
import type { PracticeResonance } from './practiceResonances.ts';

/** How a typed length lies to its resonance; the last two are no good reading. */
export type PracticeVerdict = 'resonance' | 'loudest' | 'between' | 'too-long' | 'too-short';

/** One mark of the practice column beside the truth. */
export interface PracticeReading {
  /** Id of the mark. */
  readonly key: string;
  /** What the rule's reading says of the column, its zero offset taken off, m. */
  readonly lengthM: number;
  readonly resonance: PracticeResonance;
  readonly verdict: PracticeVerdict;
}

function verdictOf(resonance: PracticeResonance, lengthM: number): PracticeVerdict {
  const fromCentreM = Math.abs(lengthM - resonance.lengthM);
  const fromLoudestM = Math.abs(lengthM - resonance.loudestM);
  if (Math.min(fromCentreM, fromLoudestM) <= toleranceM(resonance)) {
    return fromCentreM <= fromLoudestM ? 'resonance' : 'loudest';
  }
  if (isReadThere(resonance, lengthM)) return 'between';
  return lengthM > resonance.lengthM ? 'too-long' : 'too-short';
}

/**
 * The lengths that were typed for the practice column with its present fork and ends, each beside the nearest resonance,
 * shortest first. Marks of a real column are left out.
 */
export function readingsBesideTruth(
  experiment: Experiment,
  resonances: readonly PracticeResonance[],
): readonly PracticeReading[] {
  const { present, rule } = experiment;
  const isByHandReal = isOfRealColumn(experiment);
  const isOfPractice = ({ forkId, ends, excluded, evidence }: Mark): boolean =>
    !excluded &&
    forkId === present.forkId &&
    ends === present.ends &&
    (evidence === null ? !isByHandReal : evidence.source === 'practice');
  return experiment.marks
    .filter(isOfPractice)
    .flatMap((mark): PracticeReading[] => {
      const readingM = markLengthM(mark);
      if (readingM === null) return [];
      const lengthM = readingM - rule.zeroOffsetM;
      const resonance = nearestTo(resonances, lengthM);
      if (resonance === null) return [];
      return [{ key: mark.id, lengthM, resonance, verdict: verdictOf(resonance, lengthM) }];
    })
    .sort((one, other) => one.lengthM - other.lengthM);
}

function nearestTo(resonances: readonly PracticeResonance[], lengthM: number): PracticeResonance | null {
  const off = (one: PracticeResonance): number => Math.abs(one.lengthM - lengthM);
  return resonances.reduce<PracticeResonance | null>(
    (best, one) => (best === null || off(one) < off(best) ? one : best),
    null,
  );
}
