import { titleWords } from '../titles.ts';
import type { Titled } from '../../notebook/experiment.ts';
import { laterWords } from '../inUse.ts';

/** What came in from one file, as far as it is spoken of; the intake's own type has it all. */
export interface SpokenIntake {
  readonly content:
    | {
        readonly kind: 'experiment';
        readonly experiment: Titled & { readonly marks: readonly object[] };
      }
    | { readonly kind: 'table'; readonly rows: readonly object[] }
    | { readonly kind: 'results'; readonly results: readonly object[] }
    | { readonly kind: 'recording' }
    | null;
  readonly faults: readonly SpokenFault[];
  readonly remarks: readonly string[];
}

interface SpokenFault {
  readonly row: number | null;
  readonly column: string | null;
  readonly message: string;
}

/** What is said of one file that came in. */
export interface IntakeWords {
  readonly what: string;
  readonly remarks: readonly string[];
  readonly faults: readonly string[];
  /** The question whether to take the good part; null where there is nothing to ask. */
  readonly ask: string | null;
}

const MOST_FAULTS = 8;
/** So many rows are named in a message. */
const MOST_ROWS = 3;

/** Puts into words what was read of a file. */
export function intakeWords({ content, faults, remarks }: SpokenIntake): IntakeWords {
  const said = laterWords.intakeContent;
  const shown = faults.slice(0, MOST_FAULTS).map(faultWords);
  const more = faults.length - shown.length;
  const isPart = content !== null && faults.length > 0;
  return {
    what: whatWords(content, faults.length),
    remarks,
    faults: more > 0 ? [...shown, said.more(more)] : shown,
    ask: isPart ? said.ask(contentWords(content)) : null,
  };
}

function whatWords(content: SpokenIntake['content'], faults: number): string {
  const said = laterWords.intakeContent;
  if (content === null) return said.unusable;
  return faults === 0 ? said.whole(contentWords(content)) : said.inPart(contentWords(content), faults);
}

/**
 * How much of what came in is of use.
 * @param files  2 or more
 * @param usable  files of which something can be used
 * @param inPart  files among these that have faults
 */
export function usableWords(files: number, usable: number, inPart: number): string {
  const said = laterWords.usableFiles;
  if (inPart > 0) return said.inPart(usable, files, inPart);
  return usable === files ? said.all(files) : said.some(usable, files);
}

/** What became of a table's rows, and what it was. */
export type TakenTable =
  { readonly kind: 'opened'; readonly title: string } | { readonly kind: 'added'; readonly marks: number };

/** Says what was taken of a table, what was left out of it, and what else the person should know. */
export function takenWords(
  table: TakenTable,
  faults: readonly SpokenFault[],
  remarks: readonly string[],
): string {
  const said = laterWords.takenTable;
  const done = table.kind === 'opened' ? said.opened(table.title) : said.added(table.marks);
  const left = faults.length === 0 ? [] : [said.leftOut(faults.length, rowFaultWords(faults))];
  return [done, ...left, ...remarks].join(' ');
}

/** Says why nothing of a table was taken. @param title  null where it was added to the open experiment */
export function nothingTakenWords(title: string | null, faults: readonly SpokenFault[]): string {
  const said = laterWords.takenTable;
  const why = rowFaultWords(faults);
  return title === null ? said.nothing(why) : said.nothingOf(title, why);
}

function contentWords(content: NonNullable<SpokenIntake['content']>): string {
  const said = laterWords.intakeContent;
  switch (content.kind) {
    case 'experiment':
      return said.experiment(titleWords(content.experiment), content.experiment.marks.length);
    case 'table':
      return said.table(content.rows.length);
    case 'results':
      return said.results(content.results.length);
    case 'recording':
      return said.recording;
  }
}

function faultWords({ row, column, message }: SpokenFault): string {
  const said = laterWords.intakeContent;
  if (row === null) return column === null ? message : said.inField(column, message);
  return column === null ? said.inRow(row, message) : said.inRowAndField(row, column, message);
}

function rowFaultWords(faults: readonly SpokenFault[]): string {
  return faults
    .slice(0, MOST_ROWS)
    .map(({ row, message }) =>
      row === null ? laterWords.takenTable.unknownRow(message) : laterWords.intakeContent.inRow(row, message),
    )
    .join(' ');
}
