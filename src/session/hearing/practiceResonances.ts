import type { PracticeColumn } from '../../capture/practice/practiceColumn.ts';
import { markLengthM } from '../../marks/mark.ts';
import type { Mark } from '../../marks/mark.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import { loudestPlace } from '../../resonance/following/loudestPlace.ts';
import { isOfRealColumn } from './practiceReadings.ts';

/** A resonance of the practice column. */
export interface PracticeResonance {
  /** The resonant length, m. */
  readonly lengthM: number;
  /** Half of its width at half power, m. */
  readonly halfWidthM: number;
  /** Where the microphone's level is greatest while the column rests, m. */
  readonly loudestM: number;
}

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

/** Steps of the search for the loudest place: each leaves 0.62 of the stretch, at last a millionth of a half width. */
const SEARCH_STEPS = 32;
const GOLDEN = (Math.sqrt(5) - 1) / 2;
/** Half a millimetre is what a rule gives; a wide top can't be found nearer than this many half widths. */
const READ_M = 0.0005;
const READ_HALF_WIDTHS = 0.2;

/**
 * All resonances of the practice column with its present fork held at the mouth, shortest first. The loudest place
 * follows from the direct sound and the column's part as the simulation has them, and is then searched for in the
 * simulated level itself: a tube's losses and an open far end move it a little.
 */
export function practiceResonances(column: PracticeColumn): readonly PracticeResonance[] {
  return column.resonantLengthsM.map((lengthM) => {
    const halfWidthM = column.halfWidthM(lengthM);
    const { re, im } = column.responseAt(lengthM);
    const place = loudestPlace({ re: re - 1, im });
    const nearM = lengthM + (place?.halfWidths ?? 0) * halfWidthM;
    return { lengthM, halfWidthM, loudestM: loudestNearM(column, nearM, halfWidthM) };
  });
}

/** Golden section search for the greatest level within one half width. */
function loudestNearM(column: PracticeColumn, nearM: number, halfWidthM: number): number {
  const level = (lengthM: number): number => {
    const { re, im } = column.responseAt(lengthM);
    return re * re + im * im;
  };
  let fromM = Math.max(0, nearM - halfWidthM);
  let toM = nearM + halfWidthM;
  for (let step = 0; step < SEARCH_STEPS; step += 1) {
    const partM = GOLDEN * (toM - fromM);
    if (level(toM - partM) > level(fromM + partM)) toM = fromM + partM;
    else fromM = toM - partM;
  }
  return (fromM + toM) / 2;
}

/** As near as a rule, and the top's own breadth, allow. */
const toleranceM = ({ halfWidthM }: PracticeResonance): number =>
  Math.max(READ_M, READ_HALF_WIDTHS * halfWidthM);

/** Is a column of this length at resonance, at its loudest place or between the two, within what can be read? */
export function isReadThere(resonance: PracticeResonance, lengthM: number): boolean {
  return !['too-long', 'too-short'].includes(verdictOf(resonance, lengthM));
}

function verdictOf(resonance: PracticeResonance, lengthM: number): PracticeVerdict {
  const fromCentreM = Math.abs(lengthM - resonance.lengthM);
  const fromLoudestM = Math.abs(lengthM - resonance.loudestM);
  if (Math.min(fromCentreM, fromLoudestM) <= toleranceM(resonance)) {
    return fromCentreM <= fromLoudestM ? 'resonance' : 'loudest';
  }
  const apartM = Math.abs(resonance.loudestM - resonance.lengthM);
  if (fromCentreM + fromLoudestM <= 1.000001 * apartM) return 'between';
  return lengthM > resonance.lengthM ? 'too-long' : 'too-short';
}

/**
 * The lengths that were typed for the practice column with its present fork and ends, each beside the nearest resonance,
 * shortest first. Marks of a real column are left out.
 */
export function practiceReadings(
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
