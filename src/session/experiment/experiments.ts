import type { Step } from '../../notebook/step.ts';
import { LONGEST } from '../../limits/longest.ts';
import { wellFormed } from '../../limits/texts.ts';
import { copyExperiment } from '../../notebook/copyExperiment.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import { beginHistory, recordStep } from '../../notebook/history.ts';
import type { History } from '../../notebook/history.ts';
import { keepsBack, underLesson } from '../../notebook/keptBack.ts';
import { newExperiment } from '../../notebook/newExperiment.ts';
import { entitle, freeNumber } from '../../notebook/titles.ts';
import type { Keeping } from './keeping.ts';
import type { Tell } from '../notice.ts';

/** The experiment that is open, as the list sees it. */
export interface OpenExperiment {
  readonly history: History<Experiment>;
  /** Makes a change that can be undone. @returns false where it was refused */
  change(step: Step, make: (experiment: Experiment) => Experiment): boolean;
  /** Saves what is shown, as it is. */
  save(): void;
  /** Says so and gives true where another tab works on it. */
  isOnlyShown(): boolean;
}

export interface ExperimentsOutside {
  now(): string;
  newId(): string;
  /** The list has changed. */
  onChange(): void;
  /** One has gone for good, and the sound that was kept with it. */
  onErased(id: string): Promise<void>;
  tell: Tell;
}

/** The experiments of the notebook: opening, copying, renaming and putting away. One of them is open. */
export class Experiments {
  /**
   * Asked before an experiment whose changes are in this tab's memory only gives way to another one; settles with
   * whether it may. The page puts its question in here.
   */
  askFirst: () => Promise<boolean> = () => Promise.resolve(true);
  private turn: Promise<unknown> = Promise.resolve();

  constructor(
    private readonly keeping: Keeping,
    private readonly bench: OpenExperiment,
    private readonly outside: ExperimentsOutside,
  ) {}

  /**
   * Opens an experiment, as from a file. One that is in the notebook already, put away or not, gets this state as a
   * step that can be undone; any other opens beside what was open, which stays in the list. What the open lesson keeps
   * back stays back.
   * @returns false where the person would rather keep what is open, and where it was refused
   */
  open(experiment: Experiment, step: Step): Promise<boolean> {
    return this.inTurn(() => {
      // Another lesson may show what this one keeps back; a file or a table can't.
      const { lesson } = this.bench.history.present;
      const under = step === 'open lesson' ? experiment : underLesson(experiment, lesson);
      return this.openAfterAsking(under, step);
    });
  }

  private async openAfterAsking(experiment: Experiment, step: Step): Promise<boolean> {
    if (this.isOpen(experiment.id) && this.keeping.access !== 'elsewhere') {
      return this.bench.change(step, () => experiment);
    }
    if (!(await this.mayLeave())) return false;
    return this.openNow(experiment, step);
  }

  private async openNow(experiment: Experiment, step: Step): Promise<boolean> {
    const there = await this.keeping.load(experiment.id, true);
    // A record that can't be read stays as it is.
    if (there.kind === 'unreadable') {
      await this.openCopyNow(experiment);
      return true;
    }
    const isThere = there.kind === 'there';
    await this.keeping.show(
      isThere ? there.history : beginHistory(experiment),
      isThere ? there.revision : null,
    );
    if (this.keeping.access === 'elsewhere') await this.openCopyNow(experiment);
    else if (isThere) return this.bench.change(step, () => experiment);
    else this.bench.save();
    return true;
  }

  /** Opens what is in the notebook under this id, with its steps. */
  openStored(id: string): Promise<void> {
    return this.inTurn(async () => {
      if (await this.mayLeave()) await this.openStoredNow(id);
    });
  }

  private async openStoredNow(id: string): Promise<void> {
    const there = await this.keeping.load(id);
    if (there.kind === 'there') await this.keeping.show(there.history, there.revision);
    else this.outside.tell('problem', { code: 'not-opened', why: there });
  }

  /** Whether what is open may give way: it is saved, holds nothing, or the person says so. */
  async mayLeave(): Promise<boolean> {
    await this.keeping.idle();
    return !this.keeping.hasUnsaved || this.askFirst();
  }

  /** Goes on with a copy of this experiment, or of the open one with its steps; the original stays as it is. */
  openCopy(experiment?: Experiment): Promise<void> {
    return this.inTurn(() => this.openCopyNow(experiment));
  }

  private async openCopyNow(experiment?: Experiment): Promise<void> {
    const id = this.outside.newId();
    const source = experiment === undefined ? this.bench.history : beginHistory(experiment);
    const copy = copyExperiment(source, id);
    await this.keeping.show(copy, null);
    // With what was done to it in the meantime.
    this.bench.save();
    this.outside.tell('info', { code: 'copy-open', of: copy.present });
  }

  /** Opens a new experiment beside the present one. @param sameApparatus  with its forks, places, tube and rule */
  openNew(sameApparatus: boolean): Promise<void> {
    return this.inTurn(async () => {
      if (await this.mayLeave()) await this.openNewNow(sameApparatus);
    });
  }

  private async openNewNow(sameApparatus: boolean): Promise<void> {
    const plain = newExperiment(this.outside.newId(), this.outside.now());
    const fresh = { ...plain, origin: { ...plain.origin, number: await this.freeNumber() } };
    const { forks, places, tube, rule, present, className, lesson } = this.bench.history.present;
    // Else whoever begins anew would see at once what the lesson keeps back.
    const kept = lesson !== undefined && (sameApparatus || keepsBack(lesson)) ? { lesson } : {};
    const apparatus = sameApparatus ? { forks, places, tube, rule, present, className } : {};
    await this.openNow({ ...fresh, ...apparatus, ...kept }, 'new experiment');
  }

  /** Of a new experiment, which nobody has named yet. */
  private async freeNumber(): Promise<number> {
    const listed = await this.keeping.list();
    const stored = 'value' in listed ? listed.value : [];
    return freeNumber([this.bench.history.present, ...stored.map(({ experiment }) => experiment)]);
  }

  /** Gives an experiment of the list another title. */
  async rename(id: string, newTitle: string): Promise<void> {
    const { length } = newTitle;
    if (length > LONGEST.title) {
      this.outside.tell('problem', { code: 'title-too-long', length, longest: LONGEST.title });
      return;
    }
    const title = wellFormed(newTitle);
    if (this.isOpen(id)) this.bench.change('rename', (experiment) => entitle(experiment, title));
    else {
      const changedAt = this.outside.now();
      const isDone = await this.keeping.closed.change(id, (history) =>
        recordStep(history, { ...entitle(history.present, title), changedAt }, 'rename'),
      );
      if (!isDone) this.tellBusy();
    }
    this.outside.onChange();
  }

  /** Puts a copy of an experiment of the list beside it, its steps included. */
  async duplicate(id: string): Promise<void> {
    const source = this.isOpen(id)
      ? { kind: 'there' as const, history: this.bench.history }
      : await this.keeping.load(id);
    if (source.kind !== 'there') {
      this.outside.tell('problem', { code: 'not-duplicated', why: source });
      return;
    }
    await this.keeping.closed.add(copyExperiment(source.history, this.outside.newId()));
    this.outside.onChange();
  }

  /** Puts an experiment away; if it is the open one, the next of the list is opened, or a new one. */
  putAway(id: string): Promise<void> {
    return this.inTurn(() => this.putAwayNow(id));
  }

  private async putAwayNow(id: string): Promise<void> {
    if (this.isOpen(id) && (this.bench.isOnlyShown() || !(await this.mayLeave()))) return;
    await this.keeping.idle();
    if (!(await this.keeping.closed.putAway(id, this.outside.now()))) {
      this.tellBusy();
      return;
    }
    if (this.isOpen(id)) {
      await this.openNext();
    }
    this.outside.onChange();
    this.outside.tell('info', { code: 'experiment-deleted' });
  }

  /** The first of the list that can be opened, else a new one. */
  private async openNext(): Promise<void> {
    const listed = await this.keeping.list();
    for (const { id, deletedAt } of 'value' in listed ? listed.value : []) {
      const there = deletedAt === null ? await this.keeping.load(id) : null;
      if (there?.kind === 'there') {
        await this.keeping.show(there.history, there.revision);
        return;
      }
    }
    await this.openNewNow(true);
  }

  /** Brings a deleted experiment back into the list. */
  bringBack(id: string): Promise<void> {
    return this.inTurn(async () => {
      // The open one comes back as it is shown: its record belongs to what is saved next. What is apart isn't saved.
      if (this.isOpen(id) && this.keeping.access !== 'apart') {
        if (!this.bench.isOnlyShown()) this.bench.save();
        await this.keeping.idle();
      } else {
        await this.keeping.idle();
        if (!(await this.keeping.closed.putAway(id, null))) this.tellBusy();
      }
      this.outside.onChange();
    });
  }

  /** Takes a deleted experiment out for good; if it is the open one, the next of the list is opened, or a new one. */
  erase(id: string): Promise<void> {
    return this.inTurn(() => this.eraseNow(id));
  }

  private async eraseNow(id: string): Promise<void> {
    if (this.isOpen(id) && this.bench.isOnlyShown()) return;
    await this.keeping.idle();
    if (!(await this.keeping.closed.remove(id))) {
      this.tellBusy();
      return;
    }
    if (this.isOpen(id)) await this.openNext();
    await this.outside.onErased(id);
    this.outside.onChange();
  }

  /** One after the other: what is opened must be laid down before the next one takes its place. */
  private inTurn<T>(action: () => Promise<T>): Promise<T> {
    const next = this.turn.then(action);
    this.turn = next.catch(() => undefined);
    return next;
  }

  private isOpen(id: string): boolean {
    return id === this.bench.history.present.id;
  }

  private tellBusy(): void {
    this.outside.tell('problem', { code: 'busy-elsewhere' });
  }
}
