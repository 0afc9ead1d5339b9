import { readMarksTable } from '../../../src/marks/marksTable.ts';
import { marksOfRows } from '../../../src/solver/marksOfRows.ts';
import type { NoSolution, Solution } from '../../../src/solver/solution.ts';
import { solve } from '../../../src/solver/solve.ts';
import type { SolverWarningCode } from '../../../src/solver/solverWarning.ts';
import type { WrittenRow } from './worldTable.ts';

/** Rows as a table, the way that a student's file comes in. */
export function tableText(rows: readonly WrittenRow[]): string {
  const cells = rows.map((row) => [
    row.forkHz,
    row.ends,
    row.lengthCm,
    row.diameterMm,
    row.temperatureC,
    row.humidityPct,
    row.order,
    row.lengthUncertaintyMm,
    row.forkUncertaintyHz,
    row.locatedBy,
  ]);
  return [
    'fork_hz,ends,length_cm,diameter_mm,temperature_c,humidity_pct,order,length_uncertainty_mm,fork_uncertainty_hz,located_by',
    ...cells.map((row) => row.map((cell) => cell ?? '').join(',')),
  ].join('\n');
}

/** What the bench makes of such a table; null where it can't be read, which it says. */
export function solveWorld(rows: readonly WrittenRow[]): Solution | NoSolution | null {
  const table = readMarksTable(tableText(rows));
  return table.ok ? solve(marksOfRows(table.rows)) : null;
}

/**
 * What each finding says: that something is or may be wrong with these marks (alarm), that nothing could show it
 * (caution), or only what isn't known (note). A new code needs a decision here.
 */
const MEANING: Readonly<Record<SolverWarningCode, 'alarm' | 'caution' | 'note'>> = {
  'no-marks': 'alarm',
  'no-orders': 'alarm',
  contradiction: 'alarm',
  'bad-mark': 'alarm',
  outlier: 'alarm',
  inconsistent: 'alarm',
  'bracket-wide': 'alarm',
  'nothing-fits': 'alarm',
  'column-type': 'alarm',
  'length-unit': 'alarm',
  'order-ambiguous': 'alarm',
  'order-doubtful': 'alarm',
  'skipped-orders': 'note',
  'other-explanation': 'alarm',
  'exact-repeats': 'alarm',
  'forks-alike': 'note',
  'tube-too-wide': 'alarm',
  unchecked: 'caution',
  scatter: 'alarm',
  'end-correction-implausible': 'alarm',
  'unusual-temperature': 'alarm',
  'speed-implausible': 'alarm',
  'differs-from-theory': 'alarm',
  implausible: 'alarm',
  'too-few-marks': 'note',
  'end-correction-from-theory': 'note',
  'end-correction-unknown': 'note',
  'no-diameter': 'note',
  'some-diameters-missing': 'note',
  'some-temperatures-missing': 'note',
  'no-temperature': 'note',
  'air-beyond-formula': 'note',
};

/**
 * Whether the bench says that something is off: the one meaning of an alarm in these measurements. A caution says only
 * that a misreading would not show.
 */
export function saidOf(answer: Solution | NoSolution | null): { isAlarmed: boolean; isCautioned: boolean } {
  if (answer === null || answer.speedMps === null) return { isAlarmed: true, isCautioned: true };
  const meanings = answer.warnings.map(({ code }) => MEANING[code]);
  const isAlarmed = meanings.includes('alarm');
  return { isAlarmed, isCautioned: isAlarmed || meanings.includes('caution') };
}
