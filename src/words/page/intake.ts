import { titleWords } from '../titles.ts';
import type { Titled } from '../../notebook/experiment.ts';
import { counted } from '../en/grammar.ts';

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
  const shown = faults.slice(0, MOST_FAULTS).map(faultWords);
  const more = faults.length - shown.length;
  const isPart = content !== null && faults.length > 0;
  return {
    what:
      content === null
        ? 'can’t be used.'
        : `${contentWords(content)}${isPart ? `; ${counted(faults.length, 'fault')}` : ''}.`,
    remarks,
    faults: more > 0 ? [...shown, `and ${more} more.`] : shown,
    ask: isPart ? `Take the good part all the same: ${contentWords(content)}` : null,
  };
}

/**
 * How much of what came in is of use.
 * @param files  2 or more
 * @param usable  files of which something can be used
 * @param inPart  files among these that have faults
 */
export function usableWords(files: number, usable: number, inPart: number): string {
  if (usable === files && inPart === 0) return `All ${files} files can be used.`;
  const part = inPart === 0 ? '' : `, ${inPart} of them in part`;
  return `${usable} of ${files} files can be used${part}. What is wrong comes first.`;
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
  const done =
    table.kind === 'opened'
      ? `“${table.title}” is open as a new experiment`
      : `${counted(table.marks, 'mark')} added`;
  const left = `${counted(faults.length, 'row was', 'rows were')} left out: ${rowFaultWords(faults)}`;
  return [`${done}; Undo takes it back.`, ...(faults.length === 0 ? [] : [left]), ...remarks].join(' ');
}

/** Says why nothing of a table was taken. @param title  null where it was added to the open experiment */
export function nothingTakenWords(title: string | null, faults: readonly SpokenFault[]): string {
  return `No row of ${title ?? 'the table'} could be taken. ${rowFaultWords(faults)}`;
}

function contentWords(content: NonNullable<SpokenIntake['content']>): string {
  switch (content.kind) {
    case 'experiment':
      return `experiment “${titleWords(content.experiment)}”, ${counted(content.experiment.marks.length, 'mark')}`;
    case 'table':
      return `table, ${counted(content.rows.length, 'row')} of marks`;
    case 'results':
      return `table, ${counted(content.results.length, 'result')}`;
    case 'recording':
      return 'recording';
  }
}

function faultWords({ row, column, message }: SpokenFault): string {
  const where = [row === null ? null : `row ${row}`, column === null ? null : column].filter(
    (part) => part !== null,
  );
  return where.length === 0 ? message : `${where.join(', ')}: ${message}`;
}

function rowFaultWords(faults: readonly SpokenFault[]): string {
  return faults
    .slice(0, MOST_ROWS)
    .map(({ row, message }) => `row ${row ?? '?'}: ${message}`)
    .join(' ');
}
