import type { Experiment } from '../../notebook/experiment.ts';
import type { Cell } from '../csv.ts';
import { marksRows } from '../marksCsv.ts';
import { budgetTable } from './budgetTable.ts';
import { fitRows } from './fitRows.ts';
import type { PlaceSolution } from './placeSolution.ts';
import { resultRows } from './resultRows.ts';
import { traceRows } from './traceRows.ts';

/** A table that leaves the bench, as CSV or on the clipboard. */
export interface ExperimentTable {
  /** Part of the file's name. */
  readonly id: string;
  readonly name: string;
  readonly rows: (experiment: Experiment, places: readonly PlaceSolution[]) => readonly (readonly Cell[])[];
}

export const EXPERIMENT_TABLES: readonly ExperimentTable[] = [
  { id: 'marks', name: 'Marks', rows: (experiment) => marksRows(experiment) },
  { id: 'fit', name: 'Fit, mark by mark', rows: fitRows },
  { id: 'result', name: 'Result', rows: resultRows },
  { id: 'budget', name: 'Uncertainty budget', rows: budgetTable },
  { id: 'trace', name: 'Level trace around the marks', rows: (experiment) => traceRows(experiment) },
];
