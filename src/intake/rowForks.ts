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
  /** Forks that a name in the table stands for: no other name stands for them. */
  private readonly named = new Set<Fork>();

  constructor(forks: readonly Fork[]) {
    this.all = [...forks];
    this.ids = new Set(forks.map(({ id }) => id));
    for (const fork of forks) this.note(fork);
  }

  /**
   * The fork that a row was made with: of the same name where it has one, the same pitch and, where it states one, the
   * same uncertainty. What a table calls a fork tells its forks apart; another table may call the same fork otherwise.
   */
  of(row: MarkRow): Fork {
    const key = keyOf(row.forkHz, row.forkUncertaintyHz);
    const ownKey = row.forkId === '' ? key : `${key} ${row.forkId}`;
    const found = this.known.get(ownKey) ?? this.there(row, key);
    const fork = found ?? forkOf(this.newId(row.forkId), row);
    this.known.set(ownKey, fork);
    if (row.forkId !== '') this.named.add(fork);
    if (found === null) {
      this.all.push(fork);
      this.note(fork);
    }
    return fork;
  }

  /** A fork of this name and pitch that is there already, else one of this pitch that no other name stands for. */
  private there({ forkId }: MarkRow, key: string): Fork | null {
    const alike = this.known.get(key) ?? null;
    if (forkId === '' || alike === null) return alike;
    const same = this.known.get(`${key} ${forkId}`);
    if (same !== undefined) return same;
    return this.named.has(alike) ? null : alike;
  }

  private newId(forkId: string): string {
    if (forkId === '' || this.ids.has(forkId)) return freeId('fork', this.ids);
    this.ids.add(forkId);
    return forkId;
  }

  private note(fork: Fork): void {
    const { hz, standardUncertaintyHz } = forkInUse(fork);
    for (const key of [keyOf(hz, standardUncertaintyHz), keyOf(hz, null), keyOf(fork.nominalHz, null)]) {
      for (const one of [key, `${key} ${fork.id}`]) if (!this.known.has(one)) this.known.set(one, fork);
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
