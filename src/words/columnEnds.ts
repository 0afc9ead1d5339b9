import type { ColumnEnds } from '../marks/mark.ts';

/** A column's ends where there is room for one word. */
export const ENDS_SHORT: Readonly<Record<ColumnEnds, string>> = { closed: 'closed', open: 'open' };

/** The same for "a column …". */
export const ENDS_LONG: Readonly<Record<ColumnEnds, string>> = {
  closed: 'closed at one end',
  open: 'open at both ends',
};
