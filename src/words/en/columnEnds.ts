import type { ColumnEnds } from '../../marks/mark.ts';

/** A column's ends where there is room for one word. */
export const endsShort = { closed: 'closed', open: 'open' } satisfies Readonly<Record<ColumnEnds, string>>;

/** The same for "a column …". */
export const endsLong = {
  closed: 'closed at one end',
  open: 'open at both ends',
} satisfies Readonly<Record<ColumnEnds, string>>;
