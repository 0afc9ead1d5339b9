import { parseDecimal, shorten } from './parseDecimal.ts';
import type { Parsed } from './parseDecimal.ts';

const METRES_PER_UNIT: Readonly<Record<string, number>> = { mm: 0.001, cm: 0.01, dm: 0.1, m: 1 };

/** A plain number below this many centimetres is more likely metres: no column is that short. */
const SHORTEST_PLAIN_CM = 1;
/** Longest column that is taken for real, m. */
export const LONGEST_COLUMN_M = 10;

/**
 * Reads a column's length: "15.8" and "15,8" are centimetres, "158 mm", "15.8 cm", "0.158 m" say their unit.
 * @param text  what was typed
 * @returns the length in metres, above 0 and at most 10 m, or a message that says what to do
 */
export function parseLength(text: string): Parsed<{ readonly lengthM: number }> {
  const parsed = parseDecimal(text, 'length');
  if (!parsed.ok) return parsed;
  const { value, unit } = parsed;
  const perUnit = METRES_PER_UNIT[unit === '' ? 'cm' : unit.toLowerCase()];
  if (perUnit === undefined) {
    return { ok: false, message: `“${shorten(unit)}” is no unit of length here. Use cm, mm or m.` };
  }
  const shown = `${value} ${unit === '' ? 'cm' : unit}`;
  if (value === 0) return { ok: false, message: 'The length is zero. Type the length of the air column.' };
  if (value < 0) {
    return {
      ok: false,
      message: `${shown} is negative. A column’s length is above zero; check the zero of the rule.`,
    };
  }
  if (unit === '' && value < SHORTEST_PLAIN_CM) {
    return {
      ok: false,
      message: `${shown} is shorter than any column. Lengths are in cm: if these are metres, write ${value} m or ${tidyNumber(value * 100)}.`,
    };
  }
  const lengthM = tidyNumber(value * perUnit);
  if (lengthM > LONGEST_COLUMN_M) {
    const hint = unit === '' ? ` Lengths are in cm: if these are millimetres, write ${value} mm.` : '';
    return { ok: false, message: `${shown} is longer than ${LONGEST_COLUMN_M} m.${hint}` };
  }
  return { ok: true, lengthM };
}

/** Drops the noise of a change of units (15.8 cm is 0.158 m, not 0.15800000000000003). */
function tidyNumber(value: number): number {
  return Number(value.toPrecision(14));
}
