import type { CaptureState, SampleBlock, SoundSource } from '../capture/soundSource.ts';
import type { ColumnEnds, Mark, MarkEvidence } from '../marks/mark.ts';
import { addMark, deleteMark, editMark, restoreMark } from '../marks/markList.ts';
import type { MarkChange } from '../marks/markList.ts';
import { Autosave } from '../notebook/autosave.ts';
import type { SaveState } from '../notebook/autosave.ts';
import type { Experiment, Fork } from '../notebook/experiment.ts';
import { beginHistory, recordStep, redoStep, undoStep } from '../notebook/history.ts';
import type { History } from '../notebook/history.ts';
import { lessonExperiment } from '../notebook/lessonLink.ts';
import type { LessonPlan } from '../notebook/lessonLink.ts';
import { newExperiment } from '../notebook/newExperiment.ts';
import { readExperiment } from '../notebook/readExperiment.ts';
import { BenchCheck } from './benchCheck.ts';
import { BenchListen } from './benchListen.ts';
import type { CreateListening } from './benchListen.ts';
import type { BenchOutcome } from './benchOutcome.ts';
import { BenchTopics } from './benchTopics.ts';
import type { BenchTopic } from './benchTopics.ts';
import { BenchTrace } from './benchTrace.ts';
import { defaultToleranceHz } from './forkTolerance.ts';
import type { ListeningReport, ListeningUpdate, Resonance } from './listeningTypes.ts';

/** The part of the notebook's store that the bench uses. */
export interface BenchStore {
  save(experiment: Experiment): Promise<void>;
  loadOpen(): Promise<unknown>;
}

/** What the session needs from outside, so that it runs under test without a clock or a browser. */
export interface BenchOutside {
  now(): string;
  newId(): string;
  openStore(): Promise<BenchStore>;
  createListening: CreateListening;
  solve(experiment: Experiment): BenchOutcome;
}

/** Something to be shown and announced: `serial` grows so that the same words are announced again. */
export interface Notice {
  readonly serial: number;
  readonly kind: 'info' | 'problem';
  readonly message: string;
}

/** Joins a sound source, the listening and the notebook. The page reads its state and calls its actions. */
export class BenchSession {
  readonly topics = new BenchTopics();
  capture: CaptureState = { kind: 'idle' };
  trace = new BenchTrace();
  report: ListeningReport | null = null;
  saveState: SaveState = { kind: 'saved' };
  notice: Notice | null = null;
  /** How much of a recording has been heard, 0..1; null while none is. */
  progress: number | null = null;
  /** The check of one length that goes on; null while none does. */
  check: BenchCheck | null = null;
  private history: History<Experiment>;
  private solved: { readonly experiment: Experiment; readonly outcome: BenchOutcome } | null = null;
  private listen: BenchListen | null = null;
  private autosave: Autosave | null = null;

  constructor(private readonly outside: BenchOutside) {
    this.history = beginHistory(newExperiment(outside.newId(), outside.now()));
  }

  watch(topics: readonly BenchTopic[], callback: () => void): () => void {
    return this.topics.watch(topics, callback);
  }

  /** Opens the notebook and brings back what was open last. Never rejects: without storage the bench still works. */
  async restore(): Promise<void> {
    try {
      const store = await this.outside.openStore();
      this.autosave = new Autosave(
        (experiment) => store.save(experiment),
        (state) => this.setSaveState(state),
      );
      const stored = await store.loadOpen();
      if (stored === null) return;
      const reading = readExperiment(stored);
      if (reading.kind === 'experiment') this.history = beginHistory(reading.experiment);
      else this.tell('problem', `The last experiment couldn’t be read: ${reading.faults[0] ?? ''}`);
    } catch (error) {
      this.setSaveState({ kind: 'refused', message: error instanceof Error ? error.message : String(error) });
    }
    this.topics.announce('notebook');
  }

  /** An id that is new everywhere. */
  newId(): string {
    return this.outside.newId();
  }

  get experiment(): Experiment {
    return this.history.present;
  }

  get presentFork(): Fork {
    const { forks, present } = this.experiment;
    const fork = forks.find((candidate) => candidate.id === present.forkId) ?? forks[0];
    if (fork === undefined) throw new Error('An experiment always has a fork.');
    return fork;
  }

  /** The speed of sound and all that belongs to it, computed when first asked for after a change. */
  get outcome(): BenchOutcome {
    if (this.solved?.experiment !== this.experiment) {
      this.solved = { experiment: this.experiment, outcome: this.outside.solve(this.experiment) };
    }
    return this.solved.outcome;
  }

  get undoName(): string | null {
    return this.history.past.at(-1)?.step ?? null;
  }

  get redoName(): string | null {
    return this.history.future.at(-1)?.step ?? null;
  }

  get isListening(): boolean {
    return ['starting', 'running', 'interrupted'].includes(this.capture.kind);
  }

  get sourceKind(): SoundSource['kind'] | null {
    return this.listen?.source.kind ?? null;
  }

  /** Makes a change that can be undone. `step` names it for the undo button: “delete mark”. */
  change(step: string, make: (experiment: Experiment) => Experiment): void {
    const next = make(this.experiment);
    if (next === this.experiment) return;
    this.setHistory(recordStep(this.history, { ...next, changedAt: this.outside.now() }, step));
  }

  undo(): void {
    const name = this.undoName;
    if (name === null) return;
    this.setHistory(undoStep(this.history));
    this.tell('info', `Undone: ${name}.`);
  }

  redo(): void {
    const name = this.redoName;
    if (name === null) return;
    this.setHistory(redoStep(this.history));
    this.tell('info', `Done again: ${name}.`);
  }

  /** Replaces the open experiment, as from a file; undo brings the one before back. */
  open(experiment: Experiment, step: string): void {
    this.setHistory(recordStep(this.history, experiment, step));
  }

  /** Sets up a lesson as an experiment of its own; the one before stays in the notebook, and undo brings it back. */
  openLesson(plan: LessonPlan): void {
    this.open(lessonExperiment(plan, this.outside.newId(), this.outside.now()), 'open lesson');
    this.tell('info', 'The lesson is set up. What was here before is kept; Undo brings it back.');
  }

  /** A mark by hand or key: with its length, or waiting for it. */
  addMarkByHand(lengthM: number | null): void {
    this.change('add mark', (experiment) => addMark(experiment, this.newMark(lengthM, null)));
  }

  editMark(id: string, change: MarkChange, step = 'edit mark'): void {
    this.change(step, (experiment) => editMark(experiment, id, change));
  }

  deleteMark(id: string): void {
    this.change('delete mark', (experiment) => deleteMark(experiment, id));
    this.tell('info', 'Mark deleted. It can be brought back below the list.');
  }

  restoreMark(id: string): void {
    this.change('bring mark back', (experiment) => restoreMark(experiment, id));
  }

  setPresent(present: Partial<Experiment['present']>): void {
    this.change('change what is measured', (experiment) => ({
      ...experiment,
      present: { ...experiment.present, ...present },
    }));
  }

  /** Begins to listen to this source; a run that goes on is ended first. Failures arrive in `capture`. */
  async startListening(source: SoundSource): Promise<void> {
    this.listen?.stop();
    this.trace = new BenchTrace();
    this.report = null;
    const listen = new BenchListen(source, this.forkPitch(), this.outside.createListening, {
      onUpdate: (update) => this.takeUpdate(update),
      onState: (state) => this.setCapture(state),
      onReport: (report) => this.takeReport(report),
      onBlock: (block) => this.takeBlock(block),
    });
    this.listen = listen;
    await listen.start();
  }

  stopListening(): void {
    this.listen?.stop();
  }

  /** Begins to check the present length: until it ends, nothing is marked. Only while listening. */
  beginCheck(): void {
    if (this.capture.kind !== 'running') return;
    this.check = new BenchCheck({ sampleRateHz: this.capture.sampleRateHz, fork: this.forkPitch() });
    this.topics.announce('capture');
  }

  endCheck(): void {
    this.check = null;
    this.topics.announce('capture');
  }

  /** How much of a recording has been heard, 0..1. */
  setProgress(share: number): void {
    if (!this.isListening) return;
    this.progress = share;
    this.topics.announce('capture');
  }

  /** Shows a message and has it announced. */
  tell(kind: Notice['kind'], message: string): void {
    this.notice = { serial: (this.notice?.serial ?? 0) + 1, kind, message };
    this.topics.announce('notice');
  }

  dismissNotice(): void {
    this.notice = null;
    this.topics.announce('notice');
  }

  private takeBlock(block: SampleBlock): void {
    if (this.check?.push(block) === true) this.topics.announce('capture');
  }

  private takeUpdate(update: ListeningUpdate): void {
    this.trace.add(update);
    // A recording is marked from the second look, which sees both sides of each passage.
    if (this.sourceKind !== 'recording' && this.check === null) {
      for (const resonance of update.resonances) this.markResonance(resonance);
    }
    this.topics.announce('live');
  }

  private takeReport(report: ListeningReport): void {
    this.report = report;
    if (this.sourceKind !== 'recording') return;
    this.trace.resonances = [...report.resonances];
    this.trace.soundings = [...report.soundings];
    for (const resonance of report.resonances) this.markResonance(resonance);
    const count = report.resonances.length;
    this.tell(
      count > 0 ? 'info' : 'problem',
      count > 0
        ? `${count} ${count === 1 ? 'resonance' : 'resonances'} found in the recording: type the lengths.`
        : (report.warnings[0]?.message ?? 'No resonance was found in this recording.'),
    );
  }

  private markResonance(resonance: Resonance): void {
    const sounding = this.trace.soundings.find((one) => one.index === resonance.soundingIndex);
    const evidence: MarkEvidence = {
      source: this.sourceKind ?? 'microphone',
      timeS: resonance.timeS,
      riseDb: resonance.riseDb,
      aboveRoomDb: resonance.aboveRoomDb,
      confidence: resonance.confidence,
      frequencyHz: sounding?.frequencyHz ?? null,
      frequencyStandardUncertaintyHz: sounding?.frequencyStandardUncertaintyHz ?? null,
      reason: resonance.reason,
    };
    this.change('flagged resonance', (experiment) => addMark(experiment, this.newMark(null, evidence)));
    if (this.sourceKind === 'recording') return;
    const waiting = this.experiment.marks.filter((mark) => mark.lengthM === null).length;
    this.tell(
      'info',
      `Resonance flagged, ${Math.round(resonance.riseDb)} dB. ${waiting} ${waiting === 1 ? 'mark waits' : 'marks wait'} for a length.`,
    );
  }

  private newMark(lengthM: number | null, evidence: MarkEvidence | null): Mark {
    const { present } = this.experiment;
    return {
      id: this.outside.newId(),
      createdAt: this.outside.now(),
      forkId: present.forkId,
      placeId: present.placeId,
      ends: present.ends satisfies ColumnEnds,
      lengthM,
      otherLengthM: null,
      evidence,
      order: null,
      excluded: false,
      note: '',
    };
  }

  private forkPitch(): { nominalHz: number; toleranceHz: number } {
    const { nominalHz } = this.presentFork;
    return { nominalHz, toleranceHz: defaultToleranceHz(nominalHz) };
  }

  private setHistory(history: History<Experiment>): void {
    const pitchBefore = this.presentFork.nominalHz;
    this.history = history;
    this.autosave?.save(history.present);
    if (this.isListening && this.presentFork.nominalHz !== pitchBefore) this.listen?.retune(this.forkPitch());
    this.topics.announce('notebook');
  }

  private setCapture(state: CaptureState): void {
    this.capture = state;
    if (!this.isListening) {
      this.progress = null;
      this.check = null;
    }
    if (state.kind === 'failed') this.tell('problem', state.failure.message);
    if (state.kind === 'interrupted') this.tell('problem', state.message);
    this.topics.announce('capture');
  }

  private setSaveState(state: SaveState): void {
    this.saveState = state;
    this.topics.announce('capture');
  }
}
