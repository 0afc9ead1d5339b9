import { guarded } from '../marks/formulaGuard.ts';
import type { Cell } from './csv.ts';
import { writeNumber } from './csv.ts';
import { markup } from './markup.ts';

/** One table in the two forms that a clipboard holds. */
export interface CopiedTable {
  /** Tab-separated, for spreadsheets and text. */
  readonly text: string;
  /** An HTML table, for documents. */
  readonly html: string;
}

/** A table for the clipboard, the heading first. Cells that a spreadsheet would run are made harmless in both forms. */
export function copyTable(rows: readonly (readonly Cell[])[]): CopiedTable {
  const [heading = [], ...rest] = rows.map((row) => row.map(plainCell));
  return {
    text: [heading, ...rest].map((row) => `${row.join('\t')}\r\n`).join(''),
    html: markup`<table><thead><tr>${heading.map((cell) => markup`<th>${cell}</th>`)}</tr></thead><tbody>${rest.map(
      (row) => markup`<tr>${row.map((cell) => markup`<td>${cell}</td>`)}</tr>`,
    )}</tbody></table>`.text,
  };
}

/** One line without tabs: tab-separated text has no quotes that all programs know. */
function plainCell(cell: Cell): string {
  if (cell === null) return '';
  return typeof cell === 'number' ? writeNumber(cell) : guarded(cell).replace(/[\t\r\n]+/g, ' ');
}
