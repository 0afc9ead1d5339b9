import { LONGEST } from '../limits/longest.ts';
import type { Outside } from './recordReader.ts';

type Fields = Readonly<Record<string, unknown>>;

/** How one field comes back within its limit: `empty`: as if it had not been read; `nearest`: the limit itself. */
interface Mend {
  readonly field: RegExp;
  readonly name: string;
  readonly unit: string;
  readonly how: 'empty' | 'nearest';
  /** Fields beside it that mean nothing without it: emptied, too. */
  readonly with?: readonly string[];
}

/** A fork's stamp is not among them: neither is its fork anything without it, nor does another pitch do. */
const MENDS: readonly Mend[] = [
  { field: /^tube\.diameterM$/, name: 'inside diameter', unit: 'm', how: 'empty' },
  { field: /^tube\.travelM$/, name: 'longest column', unit: 'm', how: 'nearest' },
  {
    field: /^rule\.readingStandardUncertaintyM$/,
    name: 'reading uncertainty',
    unit: 'm',
    how: 'nearest',
  },
  { field: /^forks\[\d+\]\.standardUncertaintyHz$/, name: 'uncertainty', unit: 'Hz', how: 'nearest' },
  {
    field: /^forks\[\d+\]\.(measuredHz|measuredStandardUncertaintyHz)$/,
    name: 'measured pitch or its uncertainty',
    unit: 'Hz',
    how: 'empty',
    with: ['measuredHz', 'measuredStandardUncertaintyHz'],
  },
  { field: /^places\[\d+\]\.temperatureC$/, name: 'air temperature', unit: '°C', how: 'empty' },
  { field: /^places\[\d+\]\.humidityPct$/, name: 'humidity', unit: '%', how: 'empty' },
  { field: /^places\[\d+\]\.pressurePa$/, name: 'pressure', unit: 'Pa', how: 'empty' },
  {
    field: /^places\[\d+\]\.temperatureStandardUncertaintyC$/,
    name: 'uncertainty of the temperature',
    unit: '°C',
    how: 'nearest',
  },
  {
    field: /^(marks|deletedMarks)\[\d+\]\.(lengthM|otherLengthM)$/,
    name: 'length',
    unit: 'm',
    how: 'empty',
    with: ['lengthM', 'otherLengthM'],
  },
  { field: /^(marks|deletedMarks)\[\d+\]\.order$/, name: 'order', unit: '', how: 'empty' },
  {
    field: /^(marks|deletedMarks)\[\d+\]\.evidence\.(frequencyHz|frequencyStandardUncertaintyHz)$/,
    name: 'heard pitch or its uncertainty',
    unit: 'Hz',
    how: 'empty',
    with: ['frequencyHz', 'frequencyStandardUncertaintyHz'],
  },
];

/** What an item of a list is called; its number follows. */
const ITEM_NAMES: Readonly<Record<string, string>> = {
  forks: 'fork',
  places: 'place',
  marks: 'mark',
  deletedMarks: 'deleted mark',
};

/**
 * The record with the numbers that stand outside of today's limits brought into them, as far as there is a way that
 * claims nothing new. What stood there is written into its note, so that nothing is lost. `record` is not touched.
 * @param outside  what `readExperiment` found in it
 * @returns the very same record where nothing can be mended
 */
export function mendRecord(record: Fields, outside: readonly Outside[]): Fields {
  const words: string[] = [];
  let mended = record;
  for (const { path, found, limit } of outside) {
    const mend = MENDS.find(({ field }) => field.test(path));
    if (mend === undefined) continue;
    const way = wayOf(path);
    const nearest = found < limit.lowest ? limit.lowest : limit.highest;
    for (const field of [String(way.at(-1)), ...(mend.with ?? [])]) {
      mended = withField(mended, [...way.slice(0, -1), field], mend.how === 'empty' ? null : nearest);
    }
    const became = mend.how === 'empty' ? 'left out' : `taken as ${nearest}`;
    words.push(`${whereWords(way)}${mend.name} ${found} ${mend.unit}`.trim() + ` (${became})`);
  }
  if (words.length === 0) return record;
  const { note } = record;
  const told = `Outside of what the bench works with: ${words.join('; ')}.`;
  const whole = typeof note === 'string' && note !== '' ? `${told}\n${note}` : told;
  // A note that leaves no room for it keeps all its own words.
  return whole.length > LONGEST.note ? record : { ...mended, note: whole };
}

/** "marks[3].lengthM" as marks, 3, lengthM. */
function wayOf(path: string): (string | number)[] {
  return path
    .split(/[.[\]]+/)
    .filter((part) => part !== '')
    .map((part) => (/^\d+$/.test(part) ? Number(part) : part));
}

function whereWords([list, index]: readonly (string | number)[]): string {
  const name = ITEM_NAMES[String(list)];
  return name === undefined || typeof index !== 'number' ? '' : `${name} ${index + 1}: `;
}

/** A copy of a value with one field within it changed; the same where the way leads nowhere. */
function withField<T>(value: T, [first, ...rest]: readonly (string | number)[], put: unknown): T {
  if (first === undefined) return put as T;
  if (typeof value !== 'object' || value === null || !Object.hasOwn(value, first)) return value;
  const inner = withField((value as Record<string | number, unknown>)[first], rest, put);
  return (
    Array.isArray(value)
      ? value.map((item: unknown, index) => (index === first ? inner : item))
      : { ...value, [first]: inner }
  ) as T;
}
