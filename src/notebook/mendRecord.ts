import { LONGEST } from '../limits/longest.ts';
import type { Outside } from './recordReader.ts';

type Fields = Readonly<Record<string, unknown>>;

/** What a field that may be mended holds. */
export type MendedQuantity =
  | 'inside-diameter'
  | 'other-diameter'
  | 'longest-column'
  | 'reading-uncertainty'
  | 'fork-uncertainty'
  | 'measured-pitch'
  | 'temperature'
  | 'humidity'
  | 'pressure'
  | 'carbon-dioxide'
  | 'temperature-uncertainty'
  | 'length'
  | 'order'
  | 'heard-pitch';

/** A number outside of today's limits and what became of it. */
export interface Mended {
  /** The list and the number, from 1, of the item that it stood in; null where it was the experiment's own. */
  readonly item: { readonly list: ItemList; readonly number: number } | null;
  readonly quantity: MendedQuantity;
  /** As it stood there, in the record's unit. */
  readonly found: number;
  /** The limit that was taken in its place; null where it was left out. */
  readonly takenAs: number | null;
}

/** Writes what was mended into one line, for the experiment's note. */
export type WriteMended = (mended: readonly Mended[]) => string;

const ITEM_LISTS = ['forks', 'places', 'marks', 'deletedMarks'] as const;
type ItemList = (typeof ITEM_LISTS)[number];

/** How one field comes back within its limit: `empty`: as if it had not been read; `nearest`: the limit itself. */
interface Mend {
  readonly field: RegExp;
  readonly quantity: MendedQuantity;
  readonly how: 'empty' | 'nearest';
  /** Fields beside it that mean nothing without it: emptied, too. */
  readonly with?: readonly string[];
}

/** A fork's stamp is not among them: neither is its fork anything without it, nor does another pitch do. */
const MENDS: readonly Mend[] = [
  { field: /^tube\.diameterM$/, quantity: 'inside-diameter', how: 'empty' },
  { field: /^tube\.otherDiameterM$/, quantity: 'other-diameter', how: 'empty' },
  { field: /^tube\.travelM$/, quantity: 'longest-column', how: 'nearest' },
  { field: /^rule\.readingStandardUncertaintyM$/, quantity: 'reading-uncertainty', how: 'nearest' },
  { field: /^forks\[\d+\]\.standardUncertaintyHz$/, quantity: 'fork-uncertainty', how: 'nearest' },
  {
    field: /^forks\[\d+\]\.(measuredHz|measuredStandardUncertaintyHz)$/,
    quantity: 'measured-pitch',
    how: 'empty',
    with: ['measuredHz', 'measuredStandardUncertaintyHz'],
  },
  { field: /^places\[\d+\]\.temperatureC$/, quantity: 'temperature', how: 'empty' },
  { field: /^places\[\d+\]\.humidityPct$/, quantity: 'humidity', how: 'empty' },
  { field: /^places\[\d+\]\.pressurePa$/, quantity: 'pressure', how: 'empty' },
  { field: /^places\[\d+\]\.co2MoleFraction$/, quantity: 'carbon-dioxide', how: 'empty' },
  {
    field: /^places\[\d+\]\.temperatureStandardUncertaintyC$/,
    quantity: 'temperature-uncertainty',
    how: 'nearest',
  },
  {
    field: /^(marks|deletedMarks)\[\d+\]\.(lengthM|otherLengthM)$/,
    quantity: 'length',
    how: 'empty',
    with: ['lengthM', 'otherLengthM'],
  },
  { field: /^(marks|deletedMarks)\[\d+\]\.order$/, quantity: 'order', how: 'empty' },
  {
    field: /^(marks|deletedMarks)\[\d+\]\.evidence\.(frequencyHz|frequencyStandardUncertaintyHz)$/,
    quantity: 'heard-pitch',
    how: 'empty',
    with: ['frequencyHz', 'frequencyStandardUncertaintyHz'],
  },
];

/**
 * The record with the numbers that stand outside of today's limits brought into them, as far as there is a way that
 * claims nothing new. What stood there is written into its note, so that nothing is lost. `record` is not touched.
 * @param outside  what `readExperiment` found in it
 * @param write  makes the line for the note
 * @returns the very same record where nothing can be mended
 */
export function mendRecord(record: Fields, outside: readonly Outside[], write: WriteMended): Fields {
  const done: Mended[] = [];
  let mended = record;
  for (const { path, found, limit } of outside) {
    const mend = MENDS.find(({ field }) => field.test(path));
    if (mend === undefined) continue;
    const way = wayOf(path);
    const nearest = found < limit.lowest ? limit.lowest : limit.highest;
    for (const field of [String(way.at(-1)), ...(mend.with ?? [])]) {
      mended = withField(mended, [...way.slice(0, -1), field], mend.how === 'empty' ? null : nearest);
    }
    const takenAs = mend.how === 'empty' ? null : nearest;
    done.push({ item: itemOf(way), quantity: mend.quantity, found, takenAs });
  }
  if (done.length === 0) return record;
  const { note } = record;
  const told = write(done);
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

function itemOf([first, index]: readonly (string | number)[]): Mended['item'] {
  const list = ITEM_LISTS.find((name) => name === first);
  return list === undefined || typeof index !== 'number' ? null : { list, number: index + 1 };
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
