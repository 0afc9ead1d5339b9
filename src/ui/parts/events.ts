import type { Intake } from '../../intake/intakeTypes.ts';
import type { Reading } from '../../marks/parseReading.ts';
import type { Language } from '../../words/language.ts';
import type { Drawn } from '../stage/drawn.ts';
import type { SourceKind } from '../stage/sourceKind.ts';

/** Every event that an element of the page sends, with its detail; undefined where the name says it all. */
export interface PageEvents {
  /** What was read is to go to the class. */
  'class-take': readonly Intake[];
  /** To show what is doubtful. */
  'doubts-show': undefined;
  /** What is to be drawn in the column. */
  'drawn-change': Drawn;
  /** To save the experiment as a file. */
  'experiment-save': undefined;
  /** Files were chosen, to be read. */
  'files-bring': readonly File[];
  /** To go to where forks are added. */
  'fork-add': undefined;
  /** The group's name was asked for and isn't any more, while the question had the focus. */
  'group-answered': undefined;
  /** To show the keys. */
  'keys-show': undefined;
  /** The page is to speak this language. */
  'language-choose': Language;
  /** What was read off the rule, metres; null where the field was emptied. */
  'length-change': Reading | null;
  /** Enter on a length that was understood. */
  'length-done': undefined;
  /** To go to the newest mark that waits for its length. */
  'lengths-show': undefined;
  /** To begin to listen, or to rebuild capture. */
  'listen-start': undefined;
  /** A mark was chosen, by its id; null: none is any more. */
  'mark-choose': string | null;
  /** To delete the mark of the row that it comes from. */
  'mark-delete': undefined;
  /** Where the wanted page of a list begins, counted from 0. */
  'page-change': number;
  /** A number in the unit of its field (`QuantityKind.unit`). */
  'quantity-change': number;
  /** A number that may be left out was. */
  'quantity-clear': undefined;
  /** A recording was chosen, to be listened to. */
  'recording-open': File;
  /** Recordings were brought, to be listened to. */
  'recordings-take': readonly File[];
  /** Where the column's handle was put: its length, metres. */
  slide: number;
  /** How far to slide on, metres; negative to slide back. */
  'slide-by': number;
  'source-change': SourceKind;
  /** To undo the last step. */
  'step-undo': undefined;
  /** A table was pasted, to be read: its text. */
  'text-bring': string;
  /** The pasted table is done with. */
  'text-taken': undefined;
}

export type PageEvent<Name extends keyof PageEvents> = CustomEvent<PageEvents[Name]>;

type DetailOf<Name extends keyof PageEvents> = PageEvents[Name] extends undefined ? [] : [PageEvents[Name]];

/** Sends an event up to whoever listens, out of each element that it stands in. */
export function send<Name extends keyof PageEvents>(
  from: HTMLElement,
  name: Name,
  ...[detail]: DetailOf<Name>
): void {
  from.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
}

declare global {
  // eslint-disable-next-line @typescript-eslint/no-empty-object-type -- it only adds the map to the page's own
  interface HTMLElementEventMap extends PageEventMap {}
}

type PageEventMap = { [Name in keyof PageEvents]: PageEvent<Name> };
