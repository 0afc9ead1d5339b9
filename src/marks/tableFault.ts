import type { DelimitedRecord, QuoteFault } from './delimited.ts';
import { REQUIRED_COLUMNS } from './markColumns.ts';
import type { RequiredColumn } from './markColumns.ts';
import { shorten } from './parseDecimal.ts';
import type { ParseFault } from './parseFault.ts';

export interface TableFault {
  /** null where the whole table is meant. */
  readonly row: number | null;
  /** null where no single column is meant, or it has no name. */
  readonly column: string | null;
  readonly fault: TableProblem;
}

/** What is wrong with a table, or one of its cells. */
export type TableProblem =
  | ParseFault
  | {
      readonly code: 'no-text' | 'no-content' | 'no-heading' | 'no-rows' | 'all-excluded' | 'column-twice';
    }
  /** The cell counts from 1. */
  | { readonly code: 'quote'; readonly quote: QuoteFault['quote']; readonly cell: number }
  | { readonly code: 'many-rows'; readonly rows: number; readonly most: number }
  /** More cells than headings; commas may be decimal commas. */
  | {
      readonly code: 'many-cells';
      readonly cells: number;
      readonly headings: number;
      readonly isComma: boolean;
    }
  | {
      readonly code: 'columns-missing';
      readonly columns: readonly RequiredColumn[];
      /** Headings that are there, shortened. */
      readonly found: readonly string[];
      /** Of one cell only, where the delimiter or the heading may be at fault; null where some column is there. */
      readonly isOneCell: boolean | null;
      /** Headings that were likely meant. */
      readonly alike: readonly { readonly heading: string; readonly column: RequiredColumn }[];
    };

/** More headings of a table than this help nobody. */
const MOST_HEADINGS = 12;

/** One fault for all columns that are missing, with what is likely behind it. */
export function missingColumns(
  heading: DelimitedRecord,
  names: readonly string[],
  missing: readonly RequiredColumn[],
): TableFault {
  const isNone = missing.length === REQUIRED_COLUMNS.length;
  const alike = missing.flatMap((column) => {
    const [stem = ''] = column.split('_');
    const near = names.findIndex((name) => name !== column && name.startsWith(stem));
    return near < 0 ? [] : [{ heading: shorten(heading.cells[near] ?? ''), column }];
  });
  return {
    row: heading.row,
    column: missing.length === 1 ? (missing[0] ?? null) : null,
    fault: {
      code: 'columns-missing',
      columns: missing,
      found: heading.cells.map(shorten).slice(0, MOST_HEADINGS),
      isOneCell: isNone ? heading.cells.length === 1 : null,
      alike: isNone ? [] : alike,
    },
  };
}
