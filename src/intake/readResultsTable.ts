import type { DelimitedRecord } from '../marks/delimited.ts';
import { unguarded } from '../marks/formulaGuard.ts';
import { parseDecimal, shorten } from '../marks/parseDecimal.ts';
import { parseTemperature } from '../marks/parseQuantities.ts';
import type { IntakeFault, StatedResult } from './intakeTypes.ts';

/** Speeds that any gas at school has, m/s. */
const SPEED_RANGE_MPS = [100, 1500] as const;
type Column =
  'group' | 'speed_mps' | 'standard_uncertainty_mps' | 'expanded_uncertainty_mps' | 'temperature_c';

/** Whether a heading is that of a table of results. */
export function isResultsHeading(names: readonly string[]): boolean {
  return names.includes('speed_mps');
}

/**
 * Reads results that groups state without their marks: group, speed_mps, and standard_uncertainty_mps or
 * expanded_uncertainty_mps (95 %, taken as two standard ones), optionally temperature_c.
 * @param names  of the columns, as `columnName` writes them
 */
export function readResultsTable(
  names: readonly string[],
  records: readonly DelimitedRecord[],
): { readonly results: readonly StatedResult[]; readonly faults: readonly IntakeFault[] } {
  if (!names.includes('standard_uncertainty_mps') && !names.includes('expanded_uncertainty_mps')) {
    const message =
      'results need a column standard_uncertainty_mps or expanded_uncertainty_mps (95 %): without it they can’t be weighed.';
    return { results: [], faults: [{ row: 1, column: 'standard_uncertainty_mps', message }] };
  }
  const faults: IntakeFault[] = [];
  const results: StatedResult[] = [];
  for (const { row, cells } of records) {
    const cell = (column: Column): string => cells[names.indexOf(column)] ?? '';
    const before = faults.length;
    const fail = (column: Column, message: string): null => {
      faults.push({ row, column, message });
      return null;
    };
    const number = (column: Column, low: number, high: number): number | null => {
      const parsed = parseDecimal(cell(column), column);
      if (!parsed.ok) return fail(column, parsed.message);
      const isSpeed = parsed.unit === '' || /^m\/s$/i.test(parsed.unit);
      if (isSpeed && parsed.value >= low && parsed.value <= high) return parsed.value;
      return fail(column, `must be ${low}..${high} m/s, got ${shorten(cell(column))}.`);
    };
    const speedMps = number('speed_mps', ...SPEED_RANGE_MPS);
    const standard =
      cell('standard_uncertainty_mps') !== ''
        ? number('standard_uncertainty_mps', 1e-4, 200)
        : halved(number('expanded_uncertainty_mps', 2e-4, 400));
    const temperature = cell('temperature_c') === '' ? null : parseTemperature(cell('temperature_c'));
    if (temperature?.ok === false) fail('temperature_c', temperature.message);
    if (faults.length > before || speedMps === null || standard === null) continue;
    results.push({
      group: unguarded(cell('group')),
      speedMps,
      standardUncertaintyMps: standard,
      temperatureC: temperature?.ok === true ? temperature.temperatureC : null,
    });
  }
  return { results, faults };
}

function halved(value: number | null): number | null {
  return value === null ? null : value / 2;
}
