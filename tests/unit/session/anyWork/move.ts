import type { BenchTabs, Tab } from './benchTabs.ts';
import type { Line } from './line.ts';

/** What a move does, once it is begun. */
export interface Begun {
  readonly done: Promise<unknown>;
  /** Whether it needs no notebook: it goes to what is open. */
  readonly isInHere?: boolean;
  /**
   * Once all has settled: what must be shown and kept now.
   * @param was  what was open before, with what was done to it in the meantime
   * @param isAsMade  false where something was done already to what the move opened
   */
  readonly after: (was: Line, isAsMade: boolean) => Promise<void> | void;
}

/** Something that takes its time: it goes through the notebook. */
export interface Move {
  readonly words: string;
  /** Begins it on a tab's bench as the page does. @returns null where the page offers it to nobody now */
  readonly begin: (tabs: BenchTabs, tab: Tab) => Begun | null;
  /** Whether it rejects where storage fails it; else the page says in other ways what became of it. */
  readonly isSure?: boolean;
  /** Whether what was open may be gone for good. */
  readonly isErasing?: boolean;
  /** Whether all that was open goes on in what it opens. */
  readonly isGoingOn?: boolean;
}
