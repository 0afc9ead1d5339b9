import type { MarkRow } from '../marks/markRow.ts';
import type { Experiment } from '../notebook/experiment.ts';

/** Something wrong with a file. Where it can be told, the row (as a spreadsheet counts) and the column or field. */
export interface IntakeFault {
  readonly row: number | null;
  readonly column: string | null;
  readonly message: string;
}

/** A result that a group states without its marks. */
export interface StatedResult {
  readonly group: string;
  readonly speedMps: number;
  readonly standardUncertaintyMps: number;
  /** null where it wasn't given. */
  readonly temperatureC: number | null;
}

/** What can be used of a file. */
export type IntakeContent =
  | { readonly kind: 'experiment'; readonly experiment: Experiment }
  | { readonly kind: 'table'; readonly rows: readonly MarkRow[] }
  | { readonly kind: 'results'; readonly results: readonly StatedResult[] }
  | { readonly kind: 'recording' };

/** What came of reading one file or one pasted text. */
export interface Intake {
  /** The file's name. */
  readonly name: string;
  /** null where nothing can be used. With faults beside it, it is the good part only: ask before taking it. */
  readonly content: IntakeContent | null;
  readonly faults: readonly IntakeFault[];
  /** What the person should know though nothing is wrong. */
  readonly remarks: readonly string[];
}
