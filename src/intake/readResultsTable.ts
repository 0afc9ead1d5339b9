import { LIMITS } from '../limits/limits.ts';
import type { Limit } from '../limits/limits.ts';
import { LONGEST } from '../limits/longest.ts';
import type { DelimitedRecord } from '../marks/delimited.ts';
import { unguarded } from '../marks/formulaGuard.ts';
import { parseDecimal, shorten } from '../marks/parseDecimal.ts';
import type { ResultColumn } from '../marks/parseFault.ts';
import { laterWords, words } from '../words/inUse.ts';
import { tidy } from '../words/numbers.ts';
import { parseFaultWords } from '../words/parseFaults.ts';

import { parseTemperature } from '../marks/parseQuantities.ts';
import type { IntakeFault, StatedResult } from './intakeTypes.ts';

type Column = 'group' | ResultColumn | 'temperature_c';

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
    const message = laterWords.intakeFault.noUncertainty;
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
    const number = (column: ResultColumn, { lowest, highest }: Limit, scale = 1): number | null => {
      const [low, high] = [lowest * scale, highest * scale];
      const parsed = parseDecimal(cell(column), column);
      if (!parsed.ok) return fail(column, parseFaultWords(parsed.fault));
      const isSpeed = parsed.unit === '' || /^m\/s$/i.test(parsed.unit);
      if (isSpeed && parsed.value >= low && parsed.value <= high) return parsed.value;
      return fail(column, laterWords.intakeFault.noSpeed(tidy(low), tidy(high), shorten(cell(column))));
    };
    const speedMps = number('speed_mps', LIMITS.speedMps);
    const standard =
      cell('standard_uncertainty_mps') !== ''
        ? number('standard_uncertainty_mps', LIMITS.speedStandardUncertaintyMps)
        : halved(number('expanded_uncertainty_mps', LIMITS.speedStandardUncertaintyMps, 2));
    const temperature = cell('temperature_c') === '' ? null : parseTemperature(cell('temperature_c'));
    if (temperature?.ok === false) fail('temperature_c', parseFaultWords(temperature.fault));
    const group = unguarded(cell('group'));
    if (group.length > LONGEST.name) fail('group', words.tooLong.group(group.length, LONGEST.name));
    if (faults.length > before || speedMps === null || standard === null) continue;
    results.push({
      group,
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
