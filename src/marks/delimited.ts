/** One record of a delimited text. `row` counts as a spreadsheet does: the first record is row 1, blank ones count. */
export interface DelimitedRecord {
  readonly row: number;
  readonly cells: readonly string[];
}

/** Where the quoting of a delimited text is broken. */
export interface QuoteFault {
  readonly row: number;
  readonly cell: number;
  readonly quote: 'unclosed' | 'text-behind' | 'stray';
}

/**
 * Splits text after RFC 4180 with any one-character delimiter: quoted cells may hold delimiters, line ends and doubled
 * quotes; lines end in CRLF, LF or CR. Blank records are left out but counted, and so are comments: lines that begin with
 * #, whatever quotes they hold. Unquoted cells are trimmed.
 * @returns the records up to the first broken quote, and that fault, or null
 */
export function splitDelimited(
  text: string,
  delimiter: string,
): { readonly records: readonly DelimitedRecord[]; readonly fault: QuoteFault | null } {
  const records: DelimitedRecord[] = [];
  let row = 1;
  let cells: string[] = [];
  let at = 0;
  const fail = (quote: QuoteFault['quote']): ReturnType<typeof splitDelimited> => ({
    records,
    fault: { row, cell: cells.length + 1, quote },
  });
  const endsRecord = (character: string | undefined): boolean =>
    character === undefined || character === '\n' || character === '\r';

  while (at < text.length) {
    if (cells.length === 0 && text[at] === '#') {
      while (!endsRecord(text[at])) at += 1;
      at += text.startsWith('\r\n', at) ? 2 : 1;
      row += 1;
      continue;
    }
    let cell: string;
    const start = at;
    while (text[at] === ' ') at += 1;
    if (text[at] === '"') {
      cell = '';
      at += 1;
      for (;;) {
        const close = text.indexOf('"', at);
        if (close < 0) return fail('unclosed');
        cell += text.slice(at, close);
        at = close + 1;
        if (text[at] !== '"') break;
        cell += '"';
        at += 1;
      }
      while (text[at] === ' ') at += 1;
      if (!endsRecord(text[at]) && text[at] !== delimiter) return fail('text-behind');
    } else {
      at = start;
      while (!endsRecord(text[at]) && text[at] !== delimiter) at += 1;
      cell = text.slice(start, at).trim();
      if (cell.includes('"')) return fail('stray');
    }
    cells.push(cell);
    if (text[at] === delimiter) {
      at += 1;
      // A delimiter right before the end of the text still opens a last, empty cell.
      if (at >= text.length) cells.push('');
      else if (!endsRecord(text[at])) continue;
      else cells.push('');
    }
    if (cells.some((one) => one !== '')) records.push({ row, cells });
    cells = [];
    row += 1;
    at += text.startsWith('\r\n', at) ? 2 : 1;
  }
  return { records, fault: null };
}
