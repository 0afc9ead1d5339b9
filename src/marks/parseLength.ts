import { isWithin, LIMITS } from '../limits/limits.ts';
import { parseDecimal, shorten } from './parseDecimal.ts';
import type { Parsed } from './parseDecimal.ts';

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
 * @returns the length in metres, 0.1 mm to 10 m, or a message that says what to do
 */
export function parseLength(text: string): Parsed<{ readonly lengthM: number }> {
  const parsed = parseDecimal(text, 'length');
  if (!parsed.ok) return parsed;
  const { value } = parsed;
  const unit = parsed.unit === '' ? 'cm' : parsed.unit.toLowerCase();
  const perUnit = METRES_PER_UNIT.get(unit);
  if (perUnit === undefined) {
    return { ok: false, message: `“${shorten(parsed.unit)}” is no unit of length here. Use cm, mm or m.` };
  }
  const isPlain = parsed.unit === '';
  const lengthM = tidyNumber(value * perUnit);
  const { lowest, highest } = LIMITS.lengthM;
  const range = `a length must be ${tidyNumber(lowest / perUnit)}..${tidyNumber(highest / perUnit)} ${unit}`;
  const refuse = (what: string): { ok: false; message: string } => ({ ok: false, message: what });
  if (value === 0) return refuse(`The length is zero: ${range}. Type the length of the air column.`);
  if (value < 0) return refuse(`${value} ${unit} is negative: ${range}. Check the zero of the rule.`);
  if (isPlain && isLengthDoubtful(lengthM)) {
    return refuse(
      `${value} ${unit} is shorter than any column. Lengths are in cm: if these are metres, write ${value} m or ${tidyNumber(value * 100)}; else write ${value} cm.`,
    );
  }
  if (isWithin(LIMITS.lengthM, lengthM)) return { ok: true, lengthM };
  const what = lengthM > highest ? `longer than ${highest} m` : 'shorter than any column';
  const hint = isPlain
    ? `Lengths are in cm: if these are millimetres, write ${value} mm.`
    : 'Check the number and its unit (cm, mm or m).';
  return refuse(`${value} ${unit} is ${what}: ${range}. ${hint}`);
}

/** Whether a plain number is asked for its unit, because it is more likely in metres. */
export function isLengthDoubtful(lengthM: number): boolean {
  return lengthM < SHORTEST_PLAIN_CM * METRES_PER_CM;
}

/** Drops the noise of a change of units (15.8 cm is 0.158 m, not 0.15800000000000003). */
function tidyNumber(value: number): number {
  return Number(value.toPrecision(14));
}
