import type { Cell } from '../report/csv.ts';
import { reasonWords } from '../words/classroom.ts';
import type { ClassResult } from './classResult.ts';

const HEADING = [
  'group',
  'speed_mps',
  'standard_uncertainty_mps',
  'temperature_c',
  'referred_speed_mps',
  'difference_from_class_mps',
  'state',
  'marks',
  'outliers',
  'likely_reason',
  'file',
] as const;

/**
 * The class as a table, a row a group, the heading first. Its first columns are those of a table of results, so that it
 * can be opened as a class again.
 */
export function classTable({ rows }: ClassResult): readonly (readonly Cell[])[] {
  const cells = rows.map(({ group, speedMps, state, differenceMps, reason, hold }): readonly Cell[] => [
    group.source.name,
    group.outcome?.speedMps ?? null,
    group.outcome?.standardUncertaintyMps ?? null,
    group.outcome?.air?.temperatureC ?? null,
    speedMps,
    differenceMps,
    state,
    group.outcome?.markCount ?? 0,
    group.outcome?.outliers.length ?? 0,
    reasonWords({ group, reason, state, hold }),
    group.source.fileName,
  ]);
  return [HEADING, ...cells];
}
