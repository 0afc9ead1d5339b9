import type { CaptureSettings, CaptureState, SampleBlock, SoundSource } from '../capture/soundSource.ts';
import { addMark, deleteMark, editMark, restoreMark, waitingMarks } from '../marks/markList.ts';
import type { MarkChange } from '../marks/markList.ts';
import { newMark } from '../marks/newMark.ts';
import type { SaveState } from '../notebook/autosave.ts';
import type { Experiment, Fork } from '../notebook/experiment.ts';
import { amendHistory, beginHistory, recordStep, redoStep, undoStep } from '../notebook/history.ts';
import type { History } from '../notebook/history.ts';
import { newExperiment } from '../notebook/newExperiment.ts';
import { BenchCheck } from './benchCheck.ts';
import { BenchExperiments } from './benchExperiments.ts';
import { BenchGainCheck } from './benchGainCheck.ts';
import { BenchKeeping } from './benchKeeping.ts';
import type { KeepingOutside } from './benchKeeping.ts';
import { BenchListen } from './benchListen.ts';
import type { CreateListening } from './listeningLike.ts';
import type { BenchOutcome } from './benchOutcome.ts';
import { BenchTopics } from './benchTopics.ts';
import type { BenchTopic } from './benchTopics.ts';
import { BenchTrace } from './benchTrace.ts';
import { captureTrust } from './captureTrust.ts';
import type { CaptureTrust } from './captureTrust.ts';
import { defaultToleranceHz } from './forkTolerance.ts';
import { FlagMarking } from './flagMarking.ts';
import { gainCheckEnd } from './gainCheckEnd.ts';
import type { Notice } from './notice.ts';
import { matchCues } from './recordedMarks.ts';
import { SoundKeeping } from './soundKeeping.ts';
import type { SoundRun } from './soundKeeping.ts';
import type { ListeningReport, ListeningUpdate, Resonance } from './listeningTypes.ts';

/** What the session needs from outside, so that it runs under test without a clock or a browser. */
export interface BenchOutside extends KeepingOutside {
  now(): string;
  newId(): string;
  createListening: CreateListening;
  solve(experiment: Experiment): BenchOutcome;
}

/** Joins a sound source, the listening and the notebook. The page reads its state and calls its actions. */
export class BenchSession {
  readonly topics = new BenchTopics();
  capture: CaptureState = { kind: 'idle' };
  trace = new BenchTrace();
  report: ListeningReport | null = null;
  notice: Notice | null = null;
  /** How much of a recording has been heard, 0..1; null while none is. */
  progress: number | null = null;
  /** The check of one length that goes on; null while none does. */
  check: BenchCheck | null = null;
  /** The gain check that goes on, or the one that just ended; null while there is none. */
  gainCheck: BenchGainCheck | null = null;
  /** The microphone to listen to, by the browser's id; null for the system's choice. */
  microphoneId: string | null = null;
  /** Flags of this run that weren't kept because the level may be rewritten. */
  withheldFlags = 0;
  private steps: History<Experiment>;
  private solved: { readonly experiment: Experiment; readonly outcome: BenchOutcome } | null = null;
  private listen: BenchListen | null = null;
  /** What the browser last said of this run's processing; null where nothing can process the sound. */
  private settings: CaptureSettings | null = null;
  /** The notebook: saving, the list of experiments, other tabs. */
  readonly keeping: BenchKeeping;
  /** Keeps the sound of soundings while it is asked for. */
  readonly sound: SoundKeeping;
  /** The experiments of the notebook, of which this one is open. */
  readonly experiments: BenchExperiments;
  /** Makes marks of what this run flags; null before the first run. */
  private marking: FlagMarking | null = null;

  constructor(private readonly outside: BenchOutside) {
    this.steps = beginHistory(newExperiment(outside.newId(), outside.now()));
    this.keeping = new BenchKeeping(outside, {
      onHistory: (history) => this.showHistory(history),
      onHandOver: () => this.stopListening(),
      onChange: () => {
        this.topics.announce('keeping');
        this.topics.announce('capture');
      },
      tell: (kind, message) => this.tell(kind, message),
    });
    this.sound = new SoundKeeping({
      now: () => outside.now(),
      newId: () => outside.newId(),
      store: () => this.keeping.sounds,
      onChange: () => this.topics.announce('keeping'),
      tell: (kind, message) => this.tell(kind, message),
    });
    this.experiments = new BenchExperiments(this.keeping, this, {
      now: () => outside.now(),
      newId: () => outside.newId(),
      onChange: () => this.topics.announce('keeping'),
      onErased: () => this.sound.recount(),
      tell: (kind, message) => this.tell(kind, message),
    });
  }

  watch(topics: readonly BenchTopic[], callback: () => void): () => void {
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
    if (this.isOnlyShown()) return;
    const next = make(this.experiment);
    if (next === this.experiment) return;
    this.setHistory(recordStep(this.history, { ...next, changedAt: this.outside.now() }, step));
  }

  undo(): void {
    const name = this.undoName;
    if (name === null || this.isOnlyShown()) return;
    this.setHistory(undoStep(this.history));
    this.tell('info', `Undone: ${name}.`);
  }

  redo(): void {
    const name = this.redoName;
    if (name === null || this.isOnlyShown()) return;
    this.setHistory(redoStep(this.history));
    this.tell('info', `Done again: ${name}.`);
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

  editMark(id: string, change: MarkChange, step = 'edit mark'): void {
    this.change(step, (experiment) => editMark(experiment, id, change));
  }

  deleteMark(id: string): void {
    this.change('delete mark', (experiment) => deleteMark(experiment, id));
    this.tell('info', 'Mark deleted. It can be brought back below the list.', ({ deletedMarks }) =>
      deletedMarks.some((mark) => mark.id === id),
    );
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
    if (this.isOnlyShown()) return;
    this.listen?.stop();
    this.trace = new BenchTrace();
    this.marking = this.markingOf(source);
    this.settings = null;
    this.withheldFlags = 0;
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

  /** Takes another microphone from the next start on; a run of the microphone ends. */
  chooseMicrophone(deviceId: string | null): void {
    this.microphoneId = deviceId;
    if (this.sourceKind === 'microphone') this.stopListening();
    this.topics.announce('capture');
  }

  /** Whether levels of the present capture may become results. */
  get trust(): CaptureTrust {
    return captureTrust(this.settings, this.trace.warnings, this.experiment.gainCheck ?? null);
  }

  /** Begins to check whether something rewrites the level; nothing is marked meanwhile. Only while listening. */
  beginGainCheck(): void {
    if (this.capture.kind !== 'running') return;
    this.check = null;
    this.gainCheck = new BenchGainCheck();
    this.topics.announce('capture');
  }

  endGainCheck(): void {
    this.gainCheck = null;
    this.topics.announce('capture');
  }

  /** How much of a recording has been heard, 0..1. */
  setProgress(share: number): void {
    if (!this.isListening) return;
    this.progress = share;
    this.topics.announce('capture');
  }

  /** Shows a message and has it announced. @param holds  as `Notice.holds` */
  tell(kind: Notice['kind'], message: string, holds?: Notice['holds']): void {
    const serial = (this.notice?.serial ?? 0) + 1;
    this.notice = { serial, kind, message, ...(holds === undefined ? {} : { holds }) };
    this.topics.announce('notice');
  }

  dismissNotice(): void {
    this.notice = null;
    this.topics.announce('notice');
  }

  private takeBlock(block: SampleBlock): void {
    this.sound.push(block);
    if (this.check?.push(block) === true) this.topics.announce('capture');
  }

  private takeUpdate(heard: ListeningUpdate): void {
    const update = { ...heard, resonances: this.trusted(heard.resonances) };
    this.trace.add(update);
    this.marking?.addPoints(update.points);
    this.sound.takeSoundings(update.soundings);
    // A recording is marked from the second look, which sees both sides of each passage.
    if (this.sourceKind !== 'recording' && this.check === null) {
      for (const resonance of update.resonances) this.marking?.mark(resonance);
    }
    this.followGainCheck(update);
    this.marking?.finishTraces(false);
    this.topics.announce('live');
  }

  /** A level that was rewritten on its way here must not become a result: its flags are withheld, and said to be. */
  private trusted(resonances: readonly Resonance[]): readonly Resonance[] {
    if (resonances.length === 0 || (this.gainCheck !== null && !this.gainCheck.isOver)) return [];
    const { kind, message } = this.trust;
    if (kind !== 'blocked') return resonances;
    this.withheldFlags += resonances.length;
    this.tell('problem', `A resonance seemed to pass; it was not kept. ${message}`);
    this.topics.announce('capture');
    return [];
  }

  private followGainCheck({ points }: ListeningUpdate): void {
    const check = this.gainCheck;
    if (check === null || check.isOver || !check.push(points)) return;
    this.topics.announce('capture');
    const end = gainCheckEnd(check, this.outside.now(), this.settings?.deviceLabel ?? null);
    if (end === null) return;
    this.change('gain check', (experiment) => ({ ...experiment, gainCheck: end.record }));
    this.tell(end.kind, end.message);
  }

  /** Ends the sounding that a fault cut through. @returns words for it, empty where none sounded */
  private voidSounding(): string {
    this.gainCheck?.restart();
    return this.trace.voidOpenSounding()
      ? ' The sounding that was going on is void: strike the fork again.'
      : '';
  }

  private takeReport(report: ListeningReport): void {
    this.report = report;
    if (this.sourceKind !== 'recording') return;
    this.trace.resonances = [...report.resonances];
    this.trace.soundings = [...report.soundings];
    const found = matchCues(report.resonances, this.listen?.source.cues ?? []);
    for (const mark of found) this.marking?.takeRecorded(mark);
    const count = report.resonances.length;
    if (count === 0) {
      this.tell('problem', report.warnings[0]?.message ?? 'No resonance was found in this recording.');
      return;
    }
    const isWaiting = (now: Experiment): boolean => waitingMarks(now).length > 0;
    const words = `${count} ${count === 1 ? 'resonance' : 'resonances'} found in the recording`;
    if (isWaiting(this.experiment)) this.tell('info', `${words}: type the lengths.`, isWaiting);
    else this.tell('info', `${words}.`);
  }

  private markingOf(source: SoundSource): FlagMarking {
    return new FlagMarking(source.kind, this.trace, {
      now: () => this.outside.now(),
      newId: () => this.outside.newId(),
      experiment: () => this.experiment,
      change: (step, make) => this.change(step, make),
      amend: (make) => this.setHistory(amendHistory(this.history, make)),
      onMark: (id, timeS) => this.sound.addMark(id, timeS),
      tell: (kind, message, holds) => this.tell(kind, message, holds),
    });
  }

  private soundRun(sampleRateHz: number): SoundRun {
    return {
      experimentId: this.experiment.id,
      source: this.sourceKind ?? 'microphone',
      forkHz: this.presentFork.nominalHz,
      sampleRateHz,
    };
  }

  private forkPitch(): { nominalHz: number; toleranceHz: number } {
    const { nominalHz } = this.presentFork;
    return { nominalHz, toleranceHz: defaultToleranceHz(nominalHz) };
  }

  /** Saves what is shown, as it is. */
  save(): void {
    this.setHistory(this.history);
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
    if (this.isListening && this.presentFork.nominalHz !== pitchBefore) this.followFork(before);
    this.topics.announce('notebook');
  }

  /** Listens for the fork that is now in use. @param before  when the other one was */
  private followFork(before: Experiment): void {
    const { listen } = this;
    if (listen?.source.kind === 'recording') {
      this.tell('info', 'The recording is heard again from its beginning, for this fork.');
      void this.startListening(listen.source);
      return;
    }
    // What is heard from now on is another fork's level.
    this.marking?.finishTraces(true);
    this.trace.voidOpenSounding();
    listen?.retune(this.forkPitch(), (resonance, changedS) => this.takeLate(resonance, changedS, before));
    if (this.capture.kind === 'running') this.sound.begin(this.soundRun(this.capture.sampleRateHz));
  }

  /** A passage that was flagged only after the fork was changed: it is marked with the fork that sounded. */
  private takeLate(resonance: Resonance, endS: number, { id, present }: Experiment): void {
    const { experiment } = this;
    const isThere =
      experiment.id === id &&
      experiment.forks.some((fork) => fork.id === present.forkId) &&
      experiment.places.some((place) => place.id === present.placeId);
    if (!isThere || this.check !== null || this.trusted([resonance]).length === 0) return;
    this.trace.resonances.push(resonance);
    this.marking?.mark(resonance, {}, { present, endS });
    this.topics.announce('live');
  }

  /** Says so and gives true where another tab works on the experiment. */
  isOnlyShown(): boolean {
    if (this.keeping.access !== 'elsewhere') return false;
    this.tell(
      'problem',
      'This experiment is open in another tab: take it over, or open a copy (top of the page).',
    );
    return true;
  }

  private setCapture(state: CaptureState): void {
    const wasRunning = this.capture.kind === 'running';
    this.capture = state;
    if (state.kind === 'running' && !wasRunning) this.sound.begin(this.soundRun(state.sampleRateHz));
    if (!this.isListening) {
      this.sound.begin(null);
      this.marking?.finishTraces(true);
      this.progress = null;
      this.check = null;
      this.gainCheck = null;
    }
    if (state.kind === 'running') this.settings = state.settings;
    if (state.kind === 'failed')
      this.tell('problem', firstSentence(state.failure.message) + this.voidSounding());
    if (state.kind === 'interrupted') this.tell('problem', state.message + this.voidSounding());
    this.topics.announce('capture');
  }
}

/** What a short notice says of a failure; all of it, with what to do, stands where the listening was. */
function firstSentence(message: string): string {
  return /^.*?[.!?](?= |$)/.exec(message)?.[0] ?? message;
}
