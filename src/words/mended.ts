import type { Mended, MendedQuantity } from '../notebook/mendRecord.ts';
import { words } from './inUse.ts';
import { clauses } from './lists.ts';
import { unrounded } from './numbers.ts';

/** The unit that a record holds each quantity in. */
const UNITS: Readonly<Record<MendedQuantity, string>> = {
  'inside-diameter': 'm',
  'other-diameter': 'm',
  'longest-column': 'm',
  'reading-uncertainty': 'm',
  'fork-uncertainty': 'Hz',
  'measured-pitch': 'Hz',
  temperature: '°C',
  humidity: '%',
  pressure: 'Pa',
  'carbon-dioxide': '',
  'temperature-uncertainty': '°C',
  length: 'm',
  order: '',
  'heard-pitch': 'Hz',
};

/** A line for the note of a record in which numbers stood outside of today’s limits. */
export function mendedNote(mended: readonly Mended[]): string {
  return words.mended.note(clauses(mended.map(mendedWords)));
}

/** All digits: nothing that a record said is lost. */
function mendedWords({ item, quantity, found, takenAs }: Mended): string {
  const said = words.mended;
  const name = said.quantities[quantity];
  const unit = UNITS[quantity];
  const value = unit === '' ? unrounded(found) : `${unrounded(found)} ${unit}`;
  const what = takenAs === null ? said.leftOut(name, value) : said.takenAs(name, value, unrounded(takenAs));
  return item === null ? what : said.items[item.list](item.number, what);
}
