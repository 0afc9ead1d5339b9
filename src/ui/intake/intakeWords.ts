import type { Intake, IntakeContent, IntakeFault } from '../../intake/intakeTypes.ts';
import { counted } from '../../words/numbers.ts';

const MOST_FAULTS = 8;

/** What is said of one file that came in. */
export interface IntakeWords {
  readonly what: string;
  readonly remarks: readonly string[];
  readonly faults: readonly string[];
  /** The question whether to take the good part; null where there is nothing to ask. */
  readonly ask: string | null;
}

/** Puts into words what was read of a file. */
export function intakeWords({ content, faults, remarks }: Intake): IntakeWords {
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

function contentWords(content: IntakeContent): string {
  switch (content.kind) {
    case 'experiment':
      return `experiment “${content.experiment.title}”, ${counted(content.experiment.marks.length, 'mark')}`;
    case 'table':
      return `table, ${counted(content.rows.length, 'row')} of marks`;
    case 'results':
      return `table, ${counted(content.results.length, 'result')}`;
    case 'recording':
      return 'recording';
  }
}

function faultWords({ row, column, message }: IntakeFault): string {
  const where = [row === null ? null : `row ${row}`, column === null ? null : column].filter(
    (part) => part !== null,
  );
  return where.length === 0 ? message : `${where.join(', ')}: ${message}`;
}
