import type { PracticeColumn } from '../../capture/practice/practiceColumn.ts';
import { loudestPlace } from '../../resonance/following/loudestPlace.ts';

/** A resonance of the practice column. */
export interface PracticeResonance {
  /** The resonant length, m. */
  readonly lengthM: number;
  /** Half of its width at half power, m. */
  readonly halfWidthM: number;
  /** Where the microphone's level is greatest while the column rests, m. */
  readonly loudestM: number;
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

/** As near as a rule, and the top's own breadth, allow, m. */
export const toleranceM = ({ halfWidthM }: PracticeResonance): number =>
  Math.max(READ_M, READ_HALF_WIDTHS * halfWidthM);

/** Is a column of this length at resonance, at its loudest place or between the two, within what can be read? */
export function isReadThere(resonance: PracticeResonance, lengthM: number): boolean {
  const nearM = Math.min(resonance.lengthM, resonance.loudestM) - toleranceM(resonance);
  const farM = Math.max(resonance.lengthM, resonance.loudestM) + toleranceM(resonance);
  return lengthM >= nearM && lengthM <= farM;
}
