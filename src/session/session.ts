import type { Step } from '../notebook/step.ts';
import { addMark, changeSetup, deleteMark, editMark, restoreMark } from '../notebook/markList.ts';
import type { MarkChange, Setup } from '../notebook/markList.ts';
import { newMark } from '../notebook/newMark.ts';
import type { SaveState } from '../notebook/autosave.ts';
import { Drafts } from '../notebook/drafts.ts';
import type { DraftPlace } from '../notebook/drafts.ts';
import type { Experiment, Fork } from '../notebook/experiment.ts';
import { amendHistory, beginHistory, recordStep, redoStep, undoStep } from '../notebook/history.ts';
import type { History } from '../notebook/history.ts';
import { KeepingRule } from '../notebook/keepingRule.ts';
import { newExperiment } from '../notebook/newExperiment.ts';
import { Answers } from './experiment/answers.ts';
import type { Answer, AskElsewhere } from './experiment/answers.ts';
import { wellFormedTexts } from '../notebook/wellFormedTexts.ts';
import { Experiments } from './experiment/experiments.ts';
import { Hearing } from './hearing/hearing.ts';
import { Keeping } from './experiment/keeping.ts';
import type { KeepingOutside } from './experiment/keeping.ts';
import type { CreateListening } from './hearing/listeningLike.ts';
import type { Resonance } from './hearing/listeningTypes.ts';
import type { Outcome } from './experiment/outcome.ts';
import { Topics } from './topics.ts';
import type { Topic } from './topics.ts';
import { LengthTurn } from './lengthTurn.ts';
import type { Notice, Tell } from './notice.ts';
import type { SolvedGroups } from './experiment/solvedGroups.ts';
import { SoundKeeping } from './hearing/soundKeeping.ts';

/** What the session needs from outside, so that it runs under test without a clock or a browser. */
export interface SessionOutside extends KeepingOutside {
  now(): string;
  newId(): string;
  createListening: CreateListening;
  /** Loads what `createListening` needs; absent where it is there from the start. */
  loadListening?: () => Promise<unknown>;
  /** Why a resonance was flagged, in one line for a person: it is kept with the mark. */
  reasonOf(resonance: Resonance): string;
  solve(experiment: Experiment, known?: SolvedGroups): Outcome;
  /** Answers what takes time beside the page; absent where all is answered on the page. */
  readonly answerElsewhere?: AskElsewhere;
  /** Where drafts of what is typed lie. */
  readonly draftPlace: DraftPlace;
  /** Takes a fault of the page itself, for whoever looks into it. */
  onFault(error: unknown): void;
}

/** What is known of marks that couldn't be solved, or aren't yet. */
const NOTHING_SOLVED: Outcome = { places: [] };

/** The notebook's open experiment with its steps, and what is heard for it. The page reads its state and calls its actions. */
export class Session {
  readonly topics = new Topics((errors) => this.takeFaults(errors, 'follow'));
  notice: Notice | null = null;
  /** What is typed and not taken yet. */
  readonly drafts: Drafts;
  private steps: History<Experiment>;
  /** The field that was typed into last, and what came of it; null once it was left. */
  private typing: { readonly field: string; readonly experiment: Experiment } | null = null;
  /** What takes time to work out. */
  readonly answers: Answers;
  /** Marks at which the solver has failed: it isn't asked again about the same. */
  private failed: { readonly experiment: Experiment; readonly error: unknown } | null = null;
  private readonly rule = new KeepingRule();
  /** The notebook: saving, the list of experiments, other tabs. */
  readonly keeping: Keeping;
  /** Keeps the sound of soundings while it is asked for. */
  readonly sound: SoundKeeping;
  /** The experiments of the notebook, of which this one is open. */
  readonly experiments: Experiments;
  /** What is heard, and what becomes of it. */
  readonly hearing: Hearing;
  /** Whose length is typed next. */
  readonly turn: LengthTurn;

  constructor(private readonly outside: SessionOutside) {
    const now = (): string => outside.now();
    const newId = (): string => outside.newId();
    const tell: Tell = (kind, news, holds) => this.tell(kind, news, holds);
    this.drafts = new Drafts(outside.draftPlace);
    this.steps = beginHistory(newExperiment(outside.newId(), outside.now()));
    this.answers = new Answers({
      elsewhere: outside.answerElsewhere ?? null,
      onAnswer: () => this.topics.announce('answers'),
    });
    this.keeping = new Keeping(outside, {
      onHistory: (history) => this.showHistory(history),
      onHandOver: () => this.hearing.stop(),
      onChange: () => {
        this.topics.announce('keeping');
        this.topics.announce('capture');
      },
      tell,
    });
    this.sound = new SoundKeeping({
      now,
      newId,
      store: () => this.keeping.sounds,
      onChange: () => this.topics.announce('keeping'),
      tell,
    });
    this.experiments = new Experiments(this.keeping, this, {
      now,
      newId,
      onChange: () => this.topics.announce('keeping'),
      onErased: (id) => {
        this.drafts.forget(id);
        return this.sound.recount();
      },
      tell,
    });
    this.hearing = new Hearing(
      {
        now,
        newId,
        createListening: (options) => outside.createListening(options),
        ...(outside.loadListening === undefined ? {} : { loadListening: outside.loadListening }),
        experiment: () => this.experiment,
        presentFork: () => this.presentFork,
        change: (step, make) => this.change(step, make),
        amend: (make) => this.amend(make),
        isOnlyShown: () => this.isOnlyShown(),
        reasonOf: (resonance) => outside.reasonOf(resonance),
        tell,
        announce: (topic) => this.topics.announce(topic),
      },
      this.sound,
    );
    this.turn = new LengthTurn({
      experiment: () => this.experiment,
      latestMark: () => this.hearing.latestMark,
      onChange: () => this.topics.announce('notebook'),
    });
  }

  watch(topics: readonly Topic[], callback: () => void): () => void {
    return this.topics.watch(topics, callback);
  }

  /** Opens the notebook and brings back what was open last. Never rejects: without storage the bench still works. */
  async restore(): Promise<void> {
    await this.keeping.begin(this.history);
    this.topics.announce('notebook');
  }

  get saveState(): SaveState {
    return this.keeping.saveState;
  }

  /** An id that is new everywhere. */
  newId(): string {
    return this.outside.newId();
  }

  /** The experiment with its steps. */
  get history(): History<Experiment> {
    return this.steps;
  }

  get experiment(): Experiment {
    return this.history.present;
  }

  get presentFork(): Fork {
    const { forks, present } = this.experiment;
    const fork = forks.find((candidate) => candidate.id === present.forkId) ?? forks.at(0);
    if (fork === undefined) throw new RangeError('an experiment must have a fork');
    return fork;
  }

  /**
   * The speed of sound and all that belongs to it; while it is being worked out, what was last known of it. Throws what
   * the solver threw: for the parts of the page that are nothing without it.
   */
  get outcome(): Outcome {
    return this.askOutcome().value ?? NOTHING_SOLVED;
  }

  /** The same for parts that have other things to show: without places where the solver has failed. */
  get outcomeIfAny(): Outcome {
    try {
      return this.outcome;
    } catch {
      return NOTHING_SOLVED;
    }
  }

  /** Whether `outcome` is still that of before the last change. */
  get isWorkingOut(): boolean {
    return this.askOutcome().isPending;
  }

  private askOutcome(): Answer<Outcome> {
    const { experiment } = this;
    if (this.failed?.experiment === experiment) throw this.failed.error;
    try {
      return this.answers.ask({ kind: 'outcome', about: experiment, ask: null }, (about, _ask, known) =>
        this.outside.solve(about, known),
      );
    } catch (error) {
      this.failed = { experiment, error };
      throw error;
    }
  }

  get undoName(): string | null {
    return this.history.past.at(-1)?.step ?? null;
  }

  get redoName(): string | null {
    return this.history.future.at(-1)?.step ?? null;
  }

  /**
   * Makes a change that can be undone. `step` is what the history calls it: “delete mark”. What couldn't be opened again
   * is refused with a message.
   * @returns whether the experiment is now as asked
   */
  change(step: Step, make: (experiment: Experiment) => Experiment): boolean {
    if (this.isOnlyShown()) return false;
    const made = make(this.experiment);
    if (made === this.experiment) return true;
    const next = wellFormedTexts(made);
    const fault = this.rule.whyNot(next, this.experiment);
    if (fault !== null) {
      this.tell('problem', { code: 'change-refused', fault });
      return false;
    }
    this.setHistory(recordStep(this.history, { ...next, changedAt: this.outside.now() }, step));
    return true;
  }

  /**
   * Takes a text while it is typed: what goes on in the same field is one step, as long as nothing else is done.
   * @param field  one name a field, for all of its texts
   */
  changeTyped(step: Step, field: string, make: (experiment: Experiment) => Experiment): void {
    const goesOn = this.typing?.field === field && this.typing.experiment === this.experiment;
    const before = this.experiment;
    if (!goesOn) this.change(step, make);
    else if (!this.isOnlyShown()) {
      const made = make(before);
      if (made === before) return;
      const next = wellFormedTexts(made);
      const fault = this.rule.whyNot(next, before);
      if (fault !== null) {
        this.tell('problem', { code: 'change-refused', fault });
        return;
      }
      const present = { ...next, changedAt: this.outside.now() };
      this.setHistory({ ...this.history, present, future: [] });
    }
    if (this.experiment !== before) this.typing = { field, experiment: this.experiment };
  }

  /** The field that was typed into is left: what is typed next is another step. */
  endTyping(): void {
    this.typing = null;
  }

  undo(): void {
    const name = this.undoName;
    if (name === null || this.isOnlyShown()) return;
    this.setHistory(undoStep(this.history));
    this.tell('info', { code: 'undone', step: name });
  }

  redo(): void {
    const name = this.redoName;
    if (name === null || this.isOnlyShown()) return;
    this.setHistory(redoStep(this.history));
    this.tell('info', { code: 'done-again', step: name });
  }

  /** A mark by hand or key: with its length, the two of a bracket, or waiting for it. */
  addMarkByHand(lengthM: number | null, otherLengthM: number | null = null): void {
    this.change('add mark', (experiment) =>
      addMark(experiment, {
        ...newMark(experiment.present, this.outside.newId(), this.outside.now(), null),
        lengthM,
        otherLengthM,
      }),
    );
  }

  editMark(id: string, change: MarkChange, step: Step = 'edit mark'): void {
    this.change(step, (experiment) => editMark(experiment, id, change));
  }

  /** Repairs what marks were made with: a fork or a column that was chosen by mistake. */
  changeSetup(ids: readonly string[], to: Partial<Setup>): void {
    this.change('change setup', (experiment) => changeSetup(experiment, ids, to));
  }

  /** Gives a mark its length, or the two of a bracket. One that was found where the page said so is at the centre. */
  typeLength(id: string, length: Pick<MarkChange, 'lengthM' | 'otherLengthM'>): void {
    const isCentred = this.hearing.centredMarks.has(id) && length.lengthM !== null;
    const isFirst = this.experiment.marks.find((mark) => mark.id === id)?.lengthM === null;
    const located = isCentred && isFirst && length.otherLengthM === null;
    this.editMark(id, located ? { ...length, locatedBy: 'centre' } : length, 'type length');
  }

  deleteMark(id: string): void {
    if (!this.change('delete mark', (experiment) => deleteMark(experiment, id))) return;
    this.tell('info', { code: 'mark-deleted' }, ({ deletedMarks }) =>
      deletedMarks.some((mark) => mark.id === id),
    );
  }

  restoreMark(id: string): void {
    this.change('restore mark', (experiment) => restoreMark(experiment, id));
  }

  setPresent(present: Partial<Experiment['present']>): void {
    this.change('change present', (experiment) => ({
      ...experiment,
      present: { ...experiment.present, ...present },
    }));
  }

  /** Shows news and has them announced. @param holds  as `Notice.holds` */
  tell(kind: Notice['kind'], news: Notice['news'], holds?: Notice['holds']): void {
    const serial = (this.notice?.serial ?? 0) + 1;
    this.notice = { serial, kind, news, ...(holds === undefined ? {} : { holds }) };
    this.topics.announce('notice');
  }

  dismissNotice(): void {
    this.notice = null;
    this.topics.announce('notice');
  }

  /** Saves what is shown, as it is. */
  save(): void {
    this.setHistory(this.history);
  }

  /** What arrives late may belong to an experiment that is no longer open: nothing is saved where nothing changes. */
  private amend(make: (experiment: Experiment) => Experiment): void {
    const amended = amendHistory(this.history, make);
    if (amended !== this.history) this.setHistory(amended);
  }

  private setHistory(history: History<Experiment>): void {
    this.keeping.save(history);
    this.showHistory(history);
  }

  private showHistory(history: History<Experiment>): void {
    const before = this.experiment;
    const pitchBefore = this.presentFork.nominalHz;
    this.steps = history;
    if (this.notice?.holds?.(this.experiment) === false) this.dismissNotice();
    try {
      if (this.presentFork.nominalHz !== pitchBefore) this.hearing.followFork(before);
    } catch (error) {
      this.takeFaults([error], 'hearing');
    }
    this.topics.announce('notebook');
  }

  private takeFaults(errors: readonly unknown[], what: 'follow' | 'hearing'): void {
    for (const error of errors) this.outside.onFault(error);
    this.tell('problem', { code: 'page-fault', what });
  }

  /** Says so and gives true where another tab works on the experiment. */
  isOnlyShown(): boolean {
    if (this.keeping.access !== 'elsewhere') return false;
    this.tell('problem', { code: 'open-elsewhere' });
    return true;
  }
}
