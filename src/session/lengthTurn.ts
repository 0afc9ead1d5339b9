import type { Experiment } from '../notebook/experiment.ts';
import type { Mark } from '../marks/mark.ts';
import { nextWaitingMark, waitingMarks } from '../notebook/markList.ts';

export interface LengthTurnOutside {
  experiment(): Experiment;
  /** The mark of the resonance that was passed last, to which the way back leads; null where there is none. */
  latestMark(): string | null;
  onChange(): void;
}

/**
 * Whose length is typed next. That is the mark to which the way back leads, else the newest that waits. While a hand is
 * in the field it stays that field's: a resonance that passes meanwhile doesn't take the second half of a number.
 */
export class LengthTurn {
  /** What the field that has the keyboard is for: a mark by its id, or null for a new one. Undefined: no field has it. */
  private held: string | null | undefined = undefined;

  constructor(private readonly outside: LengthTurnOutside) {}

  /** Null where no mark is at turn: what is typed makes a new one. */
  get mark(): Mark | null {
    const waiting = waitingMarks(this.outside.experiment());
    if (this.held === null) return null;
    const find = (id: string | null | undefined): Mark | undefined => waiting.find((mark) => mark.id === id);
    return find(this.held) ?? find(this.outside.latestMark()) ?? waiting.at(0) ?? null;
  }

  /** The keyboard came into the field. */
  hold(): void {
    this.held = this.mark?.id ?? null;
  }

  /** The keyboard left it. */
  release(): void {
    if (this.held === undefined) return;
    this.held = undefined;
    this.outside.onChange();
  }

  /** Goes on to the next mark that waits, with or without a length for this one. @param from  the mark that was at turn */
  goOn(from: string): void {
    this.held = nextWaitingMark(this.outside.experiment(), from)?.id ?? undefined;
    this.outside.onChange();
  }
}
