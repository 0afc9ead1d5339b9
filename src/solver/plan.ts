import type { ColumnEnds } from '../marks/mark.ts';
import { fitMarks, modelLengthM } from './fitMarks.ts';
import { prepareMarks } from './prepareMarks.ts';
import type { NoSolution, SolverMark, SolverOptions } from './solution.ts';
import { solveInFull } from './solve.ts';
import type { FullSolution } from './solve.ts';

/** Orders of one fork that are tried: far beyond any travel. */
const MOST_ORDERS = 60;

/** A mark that could still be made, and what the speed's uncertainty would be with it. */
export interface NextMark {
  readonly frequencyHz: number;
  readonly ends: ColumnEnds;
  readonly order: number;
  readonly lengthM: number;
  /** Whether there is a mark of it already: another reading makes their mean more certain. */
  readonly isRepeat: boolean;
  readonly standardUncertaintyMps: number;
  /** Part of the present standard uncertainty that it would take away, 0..1. */
  readonly gain: number;
}

/** Forks of which the user may have several, with the doubt about each frequency. */
export interface AvailableFork {
  readonly forkKey: string;
  readonly frequencyHz: number;
  readonly frequencyStandardUncertaintyHz: number;
}

const MOST_CANDIDATES = 200;

/** What the next marks may be made of. */
export interface Means {
  readonly forks: readonly AvailableFork[];
  readonly ends: readonly ColumnEnds[];
  /** The longest column that can be set. */
  readonly travelM: number;
}

/**
 * Which further mark would shrink the uncertainty of the speed most: each resonance within the travel is tried as a mark
 * at the length where the present fit expects it. Repeats of a mark that is there count too.
 * @returns best first; empty where the present marks have no solution yet
 * @example
 * const { rows } = readMarksTable('fork_hz,ends,length_cm,located_by\n512,closed,15.8,centre\n512,closed,49.25,centre');
 * const forks = [{ forkKey: '512', frequencyHz: 512, frequencyStandardUncertaintyHz: 1.5 }];
 * nextMarks(marksOfRows(rows), { forks, ends: ['closed'], travelM: 1 })[0].order // → 3
 */
export function nextMarks(
  marks: readonly SolverMark[],
  means: Means,
  options: SolverOptions = {},
): readonly NextMark[] {
  return nextMarksAfter(solveInFull(marks, options), marks.at(-1), means, options);
}

/**
 * As `nextMarks`, of marks that are solved already.
 * @param pattern  what a further mark has in common with one that is there: tube, air, reading
 * @example
 * const { rows } = readMarksTable('fork_hz,ends,length_cm,located_by\n512,closed,15.8,centre\n512,closed,49.25,centre');
 * const forks = [{ forkKey: '512', frequencyHz: 512, frequencyStandardUncertaintyHz: 1.5 }];
 * const marks = marksOfRows(rows);
 * const means = { forks, ends: ['closed'], travelM: 1 };
 * nextMarksAfter(solveInFull(marks), marks.at(-1), means)[0].lengthM.toFixed(3) // → '0.827'
 */
export function nextMarksAfter(
  present: FullSolution | NoSolution,
  pattern: SolverMark | undefined,
  { forks, ends, travelM }: Means,
  options: SolverOptions = {},
): readonly NextMark[] {
  if (!('fit' in present) || pattern === undefined) return [];
  const { solution, fit, orders, outliers, preparation } = present;
  const used = preparation.rows.map(({ mark }) => mark);
  const fitted = [...outliers.map((is) => !is), true];
  const before = solution.standardUncertaintyMps;
  const found: NextMark[] = [];
  for (const fork of forks) {
    for (const type of ends) {
      if (found.length >= MOST_CANDIDATES) break;
      // Longer than nothing; the true length follows from the model below. All else is the same for each order.
      const mark = {
        ...pattern,
        ...fork,
        key: 'next',
        ends: type,
        otherLengthM: null,
        lengthM: travelM,
        order: null,
        // Of another resonance than the pattern's.
        riseDb: null,
      };
      const wider = prepareMarks([...used, mark], options);
      const row = wider.rows.at(-1);
      if (row === undefined) continue;
      const ordersThere = new Set(
        used.flatMap((one, i) => (one.forkKey === fork.forkKey && one.ends === type ? [orders[i]] : [])),
      );
      for (let order = 1; order <= MOST_ORDERS && found.length < MOST_CANDIDATES; order += 1) {
        const expectedM = modelLengthM(row, order, solution.speedMps, fit.end);
        if (expectedM > travelM) break;
        if (expectedM < 0.01) continue;
        // How far its place may lie from the resonance depends on its length.
        const [{ variance, located }] = prepareMarks([{ ...mark, lengthM: expectedM }], options).rows;
        const rows = [...wider.rows.slice(0, -1), { ...row, lengthM: expectedM, variance, located }];
        const refit = fitMarks({ ...wider, rows }, [...orders, order], fitted);
        if (refit === null) continue;
        // Both with the scatter as stated, or a lucky residual would count as a gain.
        const standardUncertaintyMps = Math.hypot(
          ...refit.contributions.map(({ contributionMps }) => contributionMps),
        );
        found.push({
          frequencyHz: fork.frequencyHz,
          ends: type,
          order,
          lengthM: expectedM,
          isRepeat: ordersThere.has(order),
          standardUncertaintyMps,
          gain: Math.max(1 - standardUncertaintyMps / before, 0),
        });
      }
    }
  }
  return found.sort((one, other) => one.standardUncertaintyMps - other.standardUncertaintyMps);
}
