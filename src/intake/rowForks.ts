import { isWithin, LIMITS } from '../limits/limits.ts';
import type { MarkRow } from '../marks/markRow.ts';
import { stampStandardUncertaintyHz } from '../marks/usualUncertainties.ts';
import type { Fork } from '../notebook/experiment.ts';
import { newFork } from '../notebook/newExperiment.ts';
import { forkInUse } from '../notebook/forkInUse.ts';
import { freeId } from './freeId.ts';

/** An experiment's forks, with those that the rows of a table add. */
export class RowForks {
  readonly all: Fork[];
  private readonly ids: Set<string>;
  private readonly known = new Map<string, Fork>();

  constructor(forks: readonly Fork[]) {
    this.all = [...forks];
    this.ids = new Set(forks.map(({ id }) => id));
    for (const fork of forks) this.note(fork);
  }

  /** The fork that a row was made with: of the same pitch and, where it states one, the same uncertainty. */
  of(row: MarkRow): Fork {
    const found = this.known.get(keyOf(row.forkHz, row.forkUncertaintyHz));
    if (found !== undefined) return found;
    const fork = forkOf(freeId('fork', this.ids), row);
    this.all.push(fork);
    this.note(fork);
    this.known.set(keyOf(row.forkHz, row.forkUncertaintyHz), fork);
    return fork;
  }

  private note(fork: Fork): void {
    const { hz, standardUncertaintyHz } = forkInUse(fork);
    for (const key of [keyOf(hz, standardUncertaintyHz), keyOf(hz, null), keyOf(fork.nominalHz, null)]) {
      if (!this.known.has(key)) this.known.set(key, fork);
    }
  }
}

/** A table states the pitch in use: where no fork is stamped so high or so low, it was measured. */
function forkOf(id: string, { forkHz, forkUncertaintyHz }: MarkRow): Fork {
  const { lowest, highest } = LIMITS.stampedHz;
  const stamped = newFork(id, Math.min(Math.max(forkHz, lowest), highest));
  if (!isWithin(LIMITS.stampedHz, forkHz)) {
    const measuredStandardUncertaintyHz = forkUncertaintyHz ?? stampStandardUncertaintyHz(forkHz);
    return { ...stamped, measuredHz: forkHz, measuredStandardUncertaintyHz };
  }
  return { ...stamped, standardUncertaintyHz: forkUncertaintyHz ?? stamped.standardUncertaintyHz };
}

/** Twelve digits: a pitch that went through a file is the same one. */
function keyOf(hz: number, uncertaintyHz: number | null): string {
  return `${hz.toPrecision(12)} ${uncertaintyHz?.toPrecision(12) ?? ''}`;
}
