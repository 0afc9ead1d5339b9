import type { MarkRow } from '../marks/marksTable.ts';
import type { Fork } from '../notebook/experiment.ts';
import { newFork } from '../notebook/newExperiment.ts';
import { forkInUse } from '../report/marksCsv.ts';
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
    const fresh = newFork(freeId('fork', this.ids), row.forkHz);
    // A record has no uncertainty of 0.
    const stated = Math.max(row.forkUncertaintyHz ?? fresh.standardUncertaintyHz, 1e-6);
    const fork = { ...fresh, standardUncertaintyHz: stated };
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

/** Twelve digits: a pitch that went through a file is the same one. */
function keyOf(hz: number, uncertaintyHz: number | null): string {
  return `${hz.toPrecision(12)} ${uncertaintyHz?.toPrecision(12) ?? ''}`;
}
