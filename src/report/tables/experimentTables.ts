import type { Experiment } from '../../notebook/experiment.ts';
import type { Cell } from '../csv.ts';
import { marksRows } from '../marksCsv.ts';
import { measuredMarks } from '../../notebook/measuredMarks.ts';
import { budgetTable } from './budgetTable.ts';
import { fitRows } from './fitRows.ts';
import { solvedPlaces } from './placeSolution.ts';
import type { PlaceSolution } from './placeSolution.ts';
import { resultRows } from './resultRows.ts';
import { traceRows } from './traceRows.ts';

/** A table that leaves the bench, as CSV or on the clipboard. */
export interface ExperimentTable {
  /** Part of the file's name. */
  readonly id: 'marks' | 'fit' | 'result' | 'budget' | 'trace';
  /** Whether it holds what was worked out, beside what was read. */
  readonly needsResult: boolean;
  /** Whether it has rows beside its heading; told without making them. */
  readonly hasRows: (experiment: Experiment, places: readonly PlaceSolution[]) => boolean;
  readonly rows: (experiment: Experiment, places: readonly PlaceSolution[]) => readonly (readonly Cell[])[];
}

const hasResult = (_experiment: Experiment, places: readonly PlaceSolution[]): boolean =>
  solvedPlaces(places).length > 0;

export const EXPERIMENT_TABLES: readonly ExperimentTable[] = [
  {
    id: 'marks',
    needsResult: false,
    hasRows: (experiment) => measuredMarks(experiment).length > 0,
    rows: marksRows,
  },
  { id: 'fit', needsResult: true, hasRows: hasResult, rows: fitRows },
  { id: 'result', needsResult: true, hasRows: hasResult, rows: resultRows },
  { id: 'budget', needsResult: true, hasRows: hasResult, rows: budgetTable },
  {
    id: 'trace',
    needsResult: false,
    hasRows: ({ marks }) => marks.some((mark) => (mark.evidence?.trace?.roomDb.length ?? 0) > 0),
    rows: traceRows,
  },
];
