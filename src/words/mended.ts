import type { Mended, MendedQuantity } from '../notebook/mendRecord.ts';

/** What each quantity is called, and the unit that a record holds it in. */
const QUANTITIES: Readonly<Record<MendedQuantity, { readonly name: string; readonly unit: string }>> = {
  'inside-diameter': { name: 'inside diameter', unit: 'm' },
  'other-diameter': { name: 'inside diameter at the other end', unit: 'm' },
  'longest-column': { name: 'longest column', unit: 'm' },
  'reading-uncertainty': { name: 'reading uncertainty', unit: 'm' },
  'fork-uncertainty': { name: 'uncertainty', unit: 'Hz' },
  'measured-pitch': { name: 'measured pitch or its uncertainty', unit: 'Hz' },
  temperature: { name: 'air temperature', unit: '°C' },
  humidity: { name: 'humidity', unit: '%' },
  pressure: { name: 'pressure', unit: 'Pa' },
  'carbon-dioxide': { name: 'carbon dioxide', unit: '' },
  'temperature-uncertainty': { name: 'uncertainty of the temperature', unit: '°C' },
  length: { name: 'length', unit: 'm' },
  order: { name: 'order', unit: '' },
  'heard-pitch': { name: 'heard pitch or its uncertainty', unit: 'Hz' },
};

const ITEMS: Readonly<Record<NonNullable<Mended['item']>['list'], string>> = {
  forks: 'fork',
  places: 'place',
  marks: 'mark',
  deletedMarks: 'deleted mark',
};

/** A line for the note of a record in which numbers stood outside of today’s limits. */
export function mendedNote(mended: readonly Mended[]): string {
  return `Outside of what the bench works with: ${mended.map(mendedWords).join('; ')}.`;
}

/** All digits: nothing that a record said is lost. */
function mendedWords({ item, quantity, found, takenAs }: Mended): string {
  const where = item === null ? '' : `${ITEMS[item.list]} ${item.number}: `;
  const { name, unit } = QUANTITIES[quantity];
  const value = unit === '' ? String(found) : `${found} ${unit}`;
  const became = takenAs === null ? 'left out' : `taken as ${takenAs}`;
  return `${where}${name} ${value} (${became})`;
}
