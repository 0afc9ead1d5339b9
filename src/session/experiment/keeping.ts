import { Autosave } from '../../notebook/autosave.ts';
import type { SaveOutcome, SaveState } from '../../notebook/autosave.ts';
import type { Experiment, Titled } from '../../notebook/experiment.ts';
import type { History } from '../../notebook/history.ts';
import type { StoredExperiment } from '../../notebook/notebookStore.ts';
import { ConflictError, GoneError, askStorage, storageFault } from '../../notebook/storageFault.ts';
import type { Asked, StorageFault } from '../../notebook/storageFault.ts';
import { ClosedExperiments } from './closedExperiments.ts';
import type { ExperimentHold, ExperimentStore, KeepingOutside, SoundStore } from './keepingOutside.ts';
import type { Loaded } from './loaded.ts';
import { ReachedStore } from './reachedStore.ts';
import type { Tell } from '../notice.ts';

export type { ExperimentHold, ExperimentStore, KeepingOutside, SoundStore } from './keepingOutside.ts';

export interface KeepingHandlers {
  /** Another state of the open experiment, or another experiment, takes the place of what is shown. Never throws. */
  onHistory(history: History<Experiment>): void;
  /** Before another tab gets the experiment: end what still adds to it. */
  onHandOver(): void;
  /** What is said about saving or about other tabs has changed. */
  onChange(): void;
  tell: Tell;
}

/**
 * `own`: this tab works on the experiment. `elsewhere`: another tab does, this one follows it and changes nothing.
 * `apart`: another tab saved something else meanwhile; what this tab holds is in its memory only.
 */
export type TabAccess = 'own' | 'elsewhere' | 'apart';

/** An experiment as this tab has it from the store. */
interface Sheet {
  readonly id: string;
  /** Of the stored state that the next save follows; null: nothing is stored of it yet. */
  revision: number | null;
}

/** A state on its way into the store. */
interface Waiting {
  readonly sheet: Sheet;
  readonly history: History<Experiment>;
}

/** Keeps the open experiment in the notebook, and this tab out of the way of others. */
export class Keeping {
  saveState: SaveState = { kind: 'nothing' };
  access: TabAccess = 'own';
  /** The experiments that aren't open. */
  readonly closed: ClosedExperiments;
  private readonly reached: ReachedStore;
  private hold: ExperimentHold | null = null;
  private holding: Promise<void> = Promise.resolve();
  /** Whether it isn't known yet whose the open experiment is: what is done to it meanwhile waits for the answer. */
  private isAsking = false;
  private sheet: Sheet | null = null;
  private history: History<Experiment> | null = null;
  private readonly autosave = new Autosave<Waiting>(
    (waiting) => this.write(waiting),
    ({ sheet }) => sheet,
    (state, { sheet, history }) => this.takeSaveState(state, sheet, history.present),
  );

  constructor(
    private readonly outside: KeepingOutside,
    private readonly handlers: KeepingHandlers,
  ) {
    this.reached = new ReachedStore(outside.writeMended);
    this.closed = new ClosedExperiments(this.reached, () => this.hold);
  }

  /** Opens the notebook and what was open last. Never rejects: without storage the bench still works. */
  async begin(fresh: History<Experiment>): Promise<void> {
    this.lay(fresh, null);
    this.hold = this.outside.createHold({
      onHandOver: () => this.handOver(),
      onLost: () => this.lose(),
      onGained: () => void this.gain(),
      onSaved: (id) => void this.follow(id),
    });
    await this.openStore();
    const last = await this.findLast();
    // What was done while the store opened counts; what is stored stays in the list.
    if (this.history === fresh && last?.kind === 'there') {
      await this.show(last.history, last.revision);
      return;
    }
    if (last?.kind === 'unreadable') {
      this.handlers.tell('problem', { code: 'last-unreadable', faults: last.faults });
    }
    if (this.history !== fresh && this.history !== null) this.save(this.history);
    await this.holdOpen();
  }

  /** Where sound is kept; null while nothing can be stored. */
  get sounds(): SoundStore | null {
    return this.reached.store;
  }

  /** Whose the older notebook in this browser is; null where there is none beside this one. */
  get olderOf(): ExperimentStore['olderOf'] {
    return this.reached.store?.olderOf ?? null;
  }

  /** Whether something that was entered is in this tab's memory only. */
  get hasUnsaved(): boolean {
    return this.saveState.kind === 'refused' && this.history !== null && holdsWork(this.history);
  }

  /** Keeps a new state of the open experiment. */
  save(history: History<Experiment>): void {
    this.history = history;
    const { sheet } = this;
    if (this.access !== 'own' || sheet === null) return;
    if (this.isAsking) this.setSaveState({ kind: 'saving' });
    else if (this.reached.store !== null) this.autosave.save({ sheet, history });
    else this.setSaveState(this.reached.fault === null ? { kind: 'saving' } : refused(this.reached.fault));
  }

  /** Settles when all is written that was given so far. */
  async idle(): Promise<void> {
    await this.holding;
    await this.autosave.idle();
  }

  /** Settles when it is clear whose the open experiment is: `access` says so. */
  async settled(): Promise<void> {
    await this.holding;
  }

  /** Tries once more to keep the open experiment, with a store opened anew. */
  async tryAgain(): Promise<void> {
    await this.openStore();
    if (this.reached.store !== null && this.history !== null) this.save(this.history);
  }

  /** Writes what waits and keeps nothing from then on: before everything is erased. */
  async stop(): Promise<void> {
    await this.autosave.idle();
    this.reached.close();
    this.setSaveState({ kind: 'nothing' });
  }

  /**
   * What is stored under this id, read. Never rejects.
   * @param orPutAway  also what was put away: the next save brings it back
   */
  load(id: string, orPutAway = false): Promise<Loaded> {
    return this.reached.load(id, orPutAway);
  }

  /** Every record of the notebook, readable or not. Never rejects. */
  list(): Promise<Asked<readonly StoredExperiment[]>> {
    return this.reached.list();
  }

  /** Makes this the open experiment. @param revision  of the stored state that it is; null: nothing is stored of it */
  async show(history: History<Experiment>, revision: number | null): Promise<void> {
    await this.idle();
    this.lay(history, revision);
    this.access = 'own';
    this.isAsking = true;
    this.setSaveState(
      this.reached.fault !== null
        ? refused(this.reached.fault)
        : { kind: revision === null ? 'nothing' : 'saved' },
    );
    this.holding = this.noteAndHold(revision !== null);
    this.handlers.onHistory(history);
    await this.holding;
  }

  /** Takes the open experiment from the tab that works on it, with all that it saved. */
  async takeOver(): Promise<void> {
    await this.hold?.takeOver();
    await this.reloadAsOwn();
  }

  private lay(history: History<Experiment>, revision: number | null): void {
    this.history = history;
    this.sheet = { id: history.present.id, revision };
  }

  private async openStore(): Promise<void> {
    const asked = await askStorage(() => this.outside.openStore((by) => this.loseStore(by)));
    if ('fault' in asked) {
      this.giveUpStore(asked.fault);
      return;
    }
    this.reached.take(asked.value);
  }

  private loseStore(by: 'another tab' | 'the browser'): void {
    this.giveUpStore(storageFault(new GoneError(by)));
    // What the browser cleared comes back as far as this tab holds it; what a person erased in another tab doesn't.
    if (by === 'the browser') void this.tryAgain();
  }

  private giveUpStore(fault: StorageFault): void {
    this.reached.giveUp(fault);
    this.setSaveState(refused(fault));
  }

  /** The experiment that this tab had open, else the one that was open last in any; null where there is none. */
  private async findLast(): Promise<Loaded | null> {
    const { store } = this.reached;
    if (store === null) return null;
    const asked = await askStorage(() => store.openId());
    if ('fault' in asked) {
      this.giveUpStore(asked.fault);
      return null;
    }
    for (const id of [this.outside.tabMemory.get(), asked.value]) {
      const loaded = id === null ? MISSING : await this.load(id);
      if (loaded.kind === 'refused') this.giveUpStore(loaded.fault);
      if (loaded.kind !== 'missing') return loaded;
    }
    return null;
  }

  /** @param isStored  whether a reload can open it, also if nothing is changed in it */
  private async noteAndHold(isStored: boolean): Promise<void> {
    const { sheet, history: laid } = this;
    const { store } = this.reached;
    if (isStored && sheet !== null) {
      this.outside.tabMemory.set(sheet.id);
      // Not worth a message: the next save says whether storage works, and the tab's own memory comes first.
      if (store !== null) await askStorage(() => store.noteOpen(sheet.id));
    }
    await this.holdOpen(laid);
  }

  private async write({ sheet, history }: Waiting): Promise<SaveOutcome> {
    const { store } = this.reached;
    if (store === null) return { kind: 'refused', fault: this.reached.reason };
    const asked = await askStorage(() => store.save(history, sheet.revision ?? 0, sheet === this.sheet));
    if ('fault' in asked) {
      if (asked.fault.kind === 'elsewhere' && sheet === this.sheet) this.setAccess('apart');
      return { kind: 'refused', fault: asked.fault };
    }
    // Taken away while it was written to: what was put in has gone with it.
    if (store !== this.reached.store) return { kind: 'refused', fault: this.reached.reason };
    sheet.revision = asked.value.revision;
    if (sheet === this.sheet) this.outside.tabMemory.set(sheet.id);
    this.hold?.saved(sheet.id);
    if (asked.value.wasGone) {
      this.handlers.tell('problem', { code: 'store-erased' });
    }
    return { kind: 'written' };
  }

  /** What became of an experiment that is no longer open is told: the state on the page is about the open one. */
  private takeSaveState(state: SaveState, sheet: Sheet, of: Titled): void {
    if (sheet === this.sheet) this.setSaveState(state);
    else if (state.kind === 'refused') {
      this.handlers.tell('problem', { code: 'changes-not-saved', of, fault: state.why });
    }
  }

  /** @param laid  what was laid down; what it has become when the answer comes was done meanwhile */
  private async holdOpen(laid = this.history): Promise<void> {
    const { sheet } = this;
    if (sheet === null) return;
    const isOwn = (await this.hold?.hold(sheet.id)) ?? true;
    const { history } = this;
    if (sheet.id !== this.sheet?.id || history === null) return;
    const waits = this.isAsking && history !== laid;
    this.isAsking = false;
    if (isOwn) {
      if (this.access !== 'apart') this.setAccess('own');
      if (waits) this.save(history);
      return;
    }
    // It is another tab's: what was done already is in this one only, and nothing more may add to it.
    this.setAccess(waits || this.access === 'apart' ? 'apart' : 'elsewhere');
    if (waits) this.setSaveState(refused(storageFault(new ConflictError())));
    this.handlers.onHandOver();
  }

  private async handOver(): Promise<void> {
    if (this.access !== 'own') return;
    this.handlers.onHandOver();
    await this.autosave.idle();
    this.lose();
  }

  private lose(): void {
    if (this.access !== 'own') return;
    this.handlers.onHandOver();
    // What couldn't be saved is nowhere else: it must not give way to what the other tab saves.
    if (this.hasUnsaved) {
      this.setAccess('apart');
      return;
    }
    this.setAccess('elsewhere');
    this.handlers.tell('problem', { code: 'taken-elsewhere' });
  }

  /** The tab that had it is gone. What this one holds apart isn't given up for that. */
  private async gain(): Promise<void> {
    if (this.access === 'elsewhere') await this.reloadAsOwn();
  }

  /** The experiment is this tab's: what was saved last counts. */
  private async reloadAsOwn(): Promise<void> {
    if (await this.reload()) this.setAccess('own');
  }

  private async follow(id: string): Promise<void> {
    if (this.access === 'elsewhere' && id === this.sheet?.id) await this.reload();
  }

  private async reload(): Promise<boolean> {
    const { sheet } = this;
    if (sheet === null) return false;
    // Put away by the tab that had it: what is done to it here brings it back.
    const loaded = await this.load(sheet.id, true);
    // By its id: a save of the other tab may have been followed meanwhile.
    if (sheet.id !== this.sheet?.id) return false;
    if (loaded.kind === 'refused') this.giveUpStore(loaded.fault);
    if (loaded.kind === 'there') {
      this.lay(loaded.history, loaded.revision);
      this.handlers.onHistory(loaded.history);
      this.setSaveState({ kind: 'saved' });
    }
    return loaded.kind === 'there' || loaded.kind === 'missing';
  }

  private setAccess(access: TabAccess): void {
    if (access === this.access) return;
    this.access = access;
    this.handlers.onChange();
  }

  private setSaveState(state: SaveState): void {
    if (state.kind === this.saveState.kind && state.kind !== 'refused') return;
    this.saveState = state;
    this.handlers.onChange();
  }
}

const MISSING: Loaded = { kind: 'missing' };

function refused(fault: StorageFault): SaveState {
  return { kind: 'refused', fault: fault.kind, why: fault };
}

/** Whether something was entered: a new experiment as it comes is no loss. */
function holdsWork({ past, future, present }: History<Experiment>): boolean {
  return (
    past.length + future.length + present.marks.length + present.deletedMarks.length > 0 ||
    present.note !== ''
  );
}
