import { isWithin, LIMITS } from '../limits/limits.ts';
import { parseDecimal, shorten } from './parseDecimal.ts';
import type { Parsed } from './parseDecimal.ts';
import type { ParseFault } from './parseFault.ts';

type BadLength = Extract<ParseFault, { readonly code: 'bad-length' }>;

const METRES_PER_UNIT: ReadonlyMap<string, number> = new Map([
  ['mm', 0.001],
  ['cm', 0.01],
  ['dm', 0.1],
  ['m', 1],
]);

const METRES_PER_CM = 0.01;
/** A plain number below this many centimetres is more likely metres: no column is that short. */
const SHORTEST_PLAIN_CM = 1;

/**
 * Reads a column's length: "15.8" and "15,8" are centimetres, "158 mm", "15.8 cm", "0.158 m" say their unit.
 * @param text  what was typed
 * @returns the length in metres, 0.1 mm to 10 m, or what is wrong
 */
export function parseLength(text: string): Parsed<{ readonly lengthM: number }> {
  const parsed = parseDecimal(text, 'length');
  if (!parsed.ok) return parsed;
  const { value } = parsed;
  const unit = parsed.unit === '' ? 'cm' : parsed.unit.toLowerCase();
  const perUnit = METRES_PER_UNIT.get(unit);
  if (perUnit === undefined) {
    return { ok: false, fault: { code: 'unknown-length-unit', typed: shorten(parsed.unit) } };
  }
  const isPlain = parsed.unit === '';
  const lengthM = tidyNumber(value * perUnit);
  const { lowest, highest } = LIMITS.lengthM;
  const refuse = (why: BadLength['why']): { readonly ok: false; readonly fault: BadLength } => {
    const range = { lowest: tidyNumber(lowest / perUnit), highest: tidyNumber(highest / perUnit) };
    return {
      ok: false,
      fault: { code: 'bad-length', why, value, unit, isPlain, ...range, longestM: highest },
    };
  };
  if (value === 0) return refuse('zero');
  if (value < 0) return refuse('negative');
  if (isPlain && isLengthDoubtful(lengthM)) return refuse('below-plain');
  if (isWithin(LIMITS.lengthM, lengthM)) return { ok: true, lengthM };
  return refuse(lengthM > highest ? 'too-long' : 'too-short');
}

/** Whether a plain number is asked for its unit, because it is more likely in metres. */
export function isLengthDoubtful(lengthM: number): boolean {
  return lengthM < SHORTEST_PLAIN_CM * METRES_PER_CM;
}

/** Drops the noise of a change of units (15.8 cm is 0.158 m, not 0.15800000000000003). */
function tidyNumber(value: number): number {
  return Number(value.toPrecision(14));
}
