import type { CaptureSettings, CaptureState, SampleBlock, SoundSource } from '../capture/soundSource.ts';
import type { ColumnEnds, LevelStretch, Mark, MarkEvidence } from '../marks/mark.ts';
import { addMark, deleteMark, editMark, markNumber, restoreMark, waitingMarks } from '../marks/markList.ts';
import type { MarkChange } from '../marks/markList.ts';
import type { SaveState } from '../notebook/autosave.ts';
import type { Experiment, Fork, GainCheckRecord } from '../notebook/experiment.ts';
import { amendHistory, beginHistory, recordStep, redoStep, undoStep } from '../notebook/history.ts';
import type { History } from '../notebook/history.ts';
import { lessonExperiment } from '../notebook/lessonLink.ts';
import type { LessonPlan } from '../notebook/lessonLink.ts';
import { newExperiment } from '../notebook/newExperiment.ts';
import { BenchCheck } from './benchCheck.ts';
import { BenchGainCheck } from './benchGainCheck.ts';
import { BenchKeeping } from './benchKeeping.ts';
import type { KeepingOutside } from './benchKeeping.ts';
import { BenchRepeats } from './benchRepeats.ts';
import { BenchListen } from './benchListen.ts';
import type { CreateListening } from './benchListen.ts';
import type { BenchOutcome } from './benchOutcome.ts';
import { BenchTopics } from './benchTopics.ts';
import type { BenchTopic } from './benchTopics.ts';
import { BenchTrace } from './benchTrace.ts';
import { captureTrust } from './captureTrust.ts';
import type { CaptureTrust } from './captureTrust.ts';
import { defaultToleranceHz } from './forkTolerance.ts';
import { REWRITTEN_DB, STEADY_DB } from './gainCheck.ts';
import { LevelLog } from './levelLog.ts';
import { lengthOfLabel, matchCues } from './recordedMarks.ts';
import type { RecordedMark } from './recordedMarks.ts';
import { SoundKeeping } from './soundKeeping.ts';
import type { SoundRun } from './soundKeeping.ts';
import { KEPT_AROUND_S, evidenceOf, evidenceTrace } from './markEvidence.ts';
import type { ListeningReport, ListeningUpdate, Resonance } from './listeningTypes.ts';

/** What the session needs from outside, so that it runs under test without a clock or a browser. */
export interface BenchOutside extends KeepingOutside {
  now(): string;
  newId(): string;
  createListening: CreateListening;
  solve(experiment: Experiment): BenchOutcome;
}

/** Of a live run's level trace so much is kept for marks to take from, s. */
const LIVE_TRACE_S = 120;

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
  private history: History<Experiment>;
  private solved: { readonly experiment: Experiment; readonly outcome: BenchOutcome } | null = null;
  private readonly repeats = new BenchRepeats();
  private listen: BenchListen | null = null;
  /** What the browser last said of this run's processing; null where nothing can process the sound. */
  private settings: CaptureSettings | null = null;
  /** The notebook: saving, the list of experiments, other tabs. */
  readonly keeping: BenchKeeping;
  /** Keeps the sound of soundings while it is asked for. */
  readonly sound: SoundKeeping;
  private log = new LevelLog();
  /** Marks of this run whose trace hasn't been heard to its end, with the time of their peak, s. */
  private readonly unfinishedTraces = new Map<string, number>();

  constructor(private readonly outside: BenchOutside) {
    this.history = beginHistory(newExperiment(outside.newId(), outside.now()));
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

  /**
   * Opens an experiment, as from a file. One that is in the notebook already gets this state as a step that can be
   * undone; any other opens beside what was open, which stays in the list.
   */
  async open(experiment: Experiment, step: string): Promise<void> {
    if (experiment.id === this.experiment.id && this.keeping.access !== 'elsewhere') {
      this.change(step, () => experiment);
      return;
    }
    const there = await this.keeping.load(experiment.id).catch(() => null);
    await this.keeping.show(there?.history ?? beginHistory(experiment), there?.revision ?? 0);
    if (this.keeping.access === 'elsewhere') await this.openCopy(experiment);
    else if (there !== null) this.change(step, () => experiment);
    else this.setHistory(this.history);
  }

  /** Opens what is in the notebook under this id, with its steps. */
  async openStored(id: string): Promise<void> {
    const there = await this.keeping.load(id).catch(() => null);
    if (there === null) this.tell('problem', 'This experiment can’t be opened: it is no longer there.');
    else await this.keeping.show(there.history, there.revision);
  }

  /** Goes on with a copy of this experiment, or of the open one with its steps; the original stays as it is. */
  async openCopy(experiment?: Experiment): Promise<void> {
    const id = this.outside.newId();
    const source = experiment === undefined ? this.history : beginHistory(experiment);
    const copy = copyOf(source, id);
    await this.keeping.show(copy, 0);
    // With what was done to it in the meantime.
    this.setHistory(this.history);
    this.tell('info', `You are working on “${copy.present.title}” now. The original stays in the list.`);
  }

  /** Opens a new experiment beside the present one. @param sameApparatus  with its forks, places, tube and rule */
  async openNew(sameApparatus: boolean): Promise<void> {
    const fresh = newExperiment(this.outside.newId(), this.outside.now());
    const { forks, places, tube, rule, present, lesson } = this.experiment;
    const apparatus = { forks, places, tube, rule, present, ...(lesson === undefined ? {} : { lesson }) };
    await this.open(sameApparatus ? { ...fresh, ...apparatus } : fresh, 'new experiment');
  }

  /** Sets up a lesson as an experiment of its own; the one before stays in the list. */
  async openLesson(plan: LessonPlan): Promise<void> {
    await this.open(lessonExperiment(plan, this.outside.newId(), this.outside.now()), 'open lesson');
    this.tell('info', 'The lesson is set up. What was here before is kept in the list under Records.');
  }

  /** Gives an experiment of the list another title. */
  async rename(id: string, title: string): Promise<void> {
    if (id === this.experiment.id) this.change('rename', (experiment) => ({ ...experiment, title }));
    else {
      const changedAt = this.outside.now();
      const isDone = await this.keeping.changeClosed(id, (history) =>
        recordStep(history, { ...history.present, title, changedAt }, 'rename'),
      );
      if (!isDone) this.tellBusy();
    }
    this.topics.announce('keeping');
  }

  /** Puts a copy of an experiment of the list beside it, its steps included. */
  async duplicate(id: string): Promise<void> {
    const source = id === this.experiment.id ? this.history : (await this.keeping.load(id))?.history;
    if (source === undefined) return;
    await this.keeping.keepBeside(copyOf(source, this.outside.newId()));
    this.topics.announce('keeping');
  }

  /** Puts an experiment away; if it is the open one, the next of the list is opened, or a new one. */
  async putAway(id: string): Promise<void> {
    if (id === this.experiment.id && this.isOnlyShown()) return;
    if (!(await this.keeping.putAway(id, this.outside.now()))) {
      this.tellBusy();
      return;
    }
    if (id === this.experiment.id) {
      const next = (await this.keeping.list()).find((other) => other.deletedAt === null);
      if (next === undefined) await this.openNew(true);
      else await this.openStored(next.id);
    }
    this.topics.announce('keeping');
    this.tell('info', 'Experiment deleted. It can be brought back below the list.');
  }

  /** Brings a deleted experiment back into the list. */
  async bringBack(id: string): Promise<void> {
    await this.keeping.putAway(id, null);
    this.topics.announce('keeping');
  }

  /** Takes a deleted experiment out for good. */
  async erase(id: string): Promise<void> {
    await this.keeping.remove(id);
    await this.sound.recount();
    this.topics.announce('keeping');
  }

  /** A mark by hand or key: with its length, the two of a bracket, or waiting for it. */
  addMarkByHand(lengthM: number | null, otherLengthM: number | null = null): void {
    this.change('add mark', (experiment) =>
      addMark(experiment, { ...this.newMark(null), lengthM, otherLengthM }),
    );
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
    if (this.isOnlyShown()) return;
    this.listen?.stop();
    this.trace = new BenchTrace();
    this.log = new LevelLog(source.kind === 'recording' ? Infinity : LIVE_TRACE_S);
    this.settings = null;
    this.withheldFlags = 0;
    this.unfinishedTraces.clear();
    this.repeats.forget();
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
    this.sound.push(block);
    if (this.check?.push(block) === true) this.topics.announce('capture');
  }

  private takeUpdate(heard: ListeningUpdate): void {
    const update = this.withoutUntrusted(heard);
    this.trace.add(update);
    this.log.add(update.points);
    this.sound.takeSoundings(update.soundings);
    // A recording is marked from the second look, which sees both sides of each passage.
    if (this.sourceKind !== 'recording' && this.check === null) {
      for (const resonance of update.resonances) this.markResonance(resonance);
    }
    this.followGainCheck(update);
    this.finishTraces(false);
    this.topics.announce('live');
  }

  /** A level that was rewritten on its way here must not become a result: its flags are withheld, and said to be. */
  private withoutUntrusted(update: ListeningUpdate): ListeningUpdate {
    if (this.gainCheck !== null && !this.gainCheck.isOver) return { ...update, resonances: [] };
    if (update.resonances.length === 0) return update;
    const { kind, message } = this.trust;
    if (kind !== 'blocked') return update;
    this.withheldFlags += update.resonances.length;
    this.tell('problem', `A resonance seemed to pass; it was not kept. ${message}`);
    this.topics.announce('capture');
    return { ...update, resonances: [] };
  }

  private followGainCheck({ points }: ListeningUpdate): void {
    const check = this.gainCheck;
    if (check === null || check.isOver || !check.push(points)) return;
    this.topics.announce('capture');
    const { verdict, departureDb } = check.answer;
    if (!check.isOver || verdict === 'cannot-tell' || departureDb === null) return;
    const gainCheck: GainCheckRecord = {
      checkedAt: this.outside.now(),
      verdict,
      departureDb,
      limitDb: verdict === 'steady' ? STEADY_DB : REWRITTEN_DB,
      device: this.settings?.deviceLabel ?? null,
    };
    this.change('gain check', (experiment) => ({ ...experiment, gainCheck }));
    this.tell(
      verdict === 'steady' ? 'info' : 'problem',
      verdict === 'steady'
        ? 'Gain check passed: the fork died smoothly while there was talk. It is kept with the experiment.'
        : 'Gain check failed: something rewrites the level. Nothing is flagged until that is put right.',
    );
  }

  /** Ends the sounding that a fault cut through. @returns words for it, empty where none sounded */
  private voidSounding(): string {
    this.gainCheck?.restart();
    return this.trace.voidOpenSounding()
      ? ' The sounding that was going on is void: strike the fork again.'
      : '';
  }

  /** Gives marks the rest of their trace once it has been heard. @param isEnd  nothing more comes */
  private finishTraces(isEnd: boolean): void {
    for (const [id, peakS] of [...this.unfinishedTraces]) {
      if (!isEnd && (this.log.latestS ?? 0) < peakS + KEPT_AROUND_S) continue;
      this.unfinishedTraces.delete(id);
      const trace = evidenceTrace(this.log, peakS);
      this.setHistory(amendHistory(this.history, (state) => amendTrace(state, id, trace)));
    }
  }

  private takeReport(report: ListeningReport): void {
    this.report = report;
    if (this.sourceKind !== 'recording') return;
    this.trace.resonances = [...report.resonances];
    this.trace.soundings = [...report.soundings];
    const found = matchCues(report.resonances, this.listen?.source.cues ?? []);
    for (const mark of found) this.takeRecorded(mark);
    const count = report.resonances.length;
    this.tell(
      count > 0 ? 'info' : 'problem',
      count > 0
        ? `${count} ${count === 1 ? 'resonance' : 'resonances'} found in the recording: type the lengths.`
        : (report.warnings[0]?.message ?? 'No resonance was found in this recording.'),
    );
  }

  /** Marks what a recording holds; what it has marked itself keeps its length, or renews the mark it belongs to. */
  private takeRecorded({ resonance, cue }: RecordedMark): void {
    const old = this.experiment.marks.find((mark) => mark.id === cue?.markId);
    if (old !== undefined && resonance === null) return;
    if (resonance === null) {
      const mark = {
        ...this.newMark(null),
        lengthM: lengthOfLabel(cue?.label ?? ''),
        note: cue?.label ?? '',
      };
      this.change('marked in the recording', (experiment) => addMark(experiment, mark));
      return;
    }
    if (old === undefined) {
      const lengthM = lengthOfLabel(cue?.label ?? '');
      this.markResonance(resonance, lengthM === null ? {} : { lengthM });
      return;
    }
    const sounding = this.trace.soundings.find((one) => one.index === resonance.soundingIndex);
    const trace = evidenceTrace(this.log, resonance.timeS);
    this.editMark(old.id, { evidence: evidenceOf(resonance, sounding, 'recording', trace) }, 'listen again');
  }

  private markResonance(resonance: Resonance, known: { readonly lengthM?: number } = {}): void {
    const sounding = this.trace.soundings.find((one) => one.index === resonance.soundingIndex);
    const source = this.sourceKind ?? 'microphone';
    const trace = evidenceTrace(this.log, resonance.timeS);
    const repeatOf = this.repeatedNow(resonance);
    const mark = {
      ...this.newMark(evidenceOf(resonance, sounding, source, trace)),
      ...(repeatOf === null ? {} : { repeatOf }),
      ...known,
    };
    this.repeats.note(resonance, repeatOf ?? mark.id);
    this.change('flagged resonance', (experiment) => addMark(experiment, mark));
    this.unfinishedTraces.set(mark.id, resonance.timeS);
    this.sound.addMark(mark.id, resonance.timeS);
    if (this.sourceKind === 'recording') return;
    const rise = `${Math.round(resonance.riseDb)} dB`;
    const waiting = waitingMarks(this.experiment).length;
    this.tell(
      'info',
      repeatOf === null
        ? `Resonance flagged, ${rise}. ${waiting} ${waiting === 1 ? 'mark waits' : 'marks wait'} for a length.`
        : `The same resonance again, ${rise}: counted with mark ${markNumber(this.experiment.marks, repeatOf)}.`,
    );
  }

  /** The mark that this flag passes again; null where it is new, or where that mark is gone. */
  private repeatedNow(resonance: Resonance): string | null {
    const id = this.repeats.repeated(resonance);
    const { marks, present } = this.experiment;
    const mark = marks.find((one) => one.id === id);
    const isHere =
      mark !== undefined &&
      mark.forkId === present.forkId &&
      mark.placeId === present.placeId &&
      mark.ends === present.ends;
    return isHere ? mark.id : null;
  }

  private newMark(evidence: MarkEvidence | null): Mark {
    const { present } = this.experiment;
    return {
      id: this.outside.newId(),
      createdAt: this.outside.now(),
      forkId: present.forkId,
      placeId: present.placeId,
      ends: present.ends satisfies ColumnEnds,
      lengthM: null,
      otherLengthM: null,
      evidence,
      order: null,
      excluded: false,
      note: '',
    };
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

  private setHistory(history: History<Experiment>): void {
    this.keeping.save(history);
    this.showHistory(history);
  }

  private showHistory(history: History<Experiment>): void {
    const pitchBefore = this.presentFork.nominalHz;
    this.history = history;
    if (this.isListening && this.presentFork.nominalHz !== pitchBefore) {
      this.listen?.retune(this.forkPitch());
      if (this.capture.kind === 'running') this.sound.begin(this.soundRun(this.capture.sampleRateHz));
    }
    this.topics.announce('notebook');
  }

  /** Says so and gives true where another tab works on the experiment. */
  private isOnlyShown(): boolean {
    if (this.keeping.access !== 'elsewhere') return false;
    this.tell(
      'problem',
      'This experiment is open in another tab: take it over, or open a copy (top of the page).',
    );
    return true;
  }

  private tellBusy(): void {
    this.tell('problem', 'This experiment is open in another tab: close it there first.');
  }

  private setCapture(state: CaptureState): void {
    const wasRunning = this.capture.kind === 'running';
    this.capture = state;
    if (state.kind === 'running' && !wasRunning) this.sound.begin(this.soundRun(state.sampleRateHz));
    if (!this.isListening) {
      this.sound.begin(null);
      this.finishTraces(true);
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

/** The state with the trace of one mark, deleted or not, completed. */
function amendTrace(state: Experiment, id: string, trace: LevelStretch | null): Experiment {
  const has = (list: readonly Mark[]): boolean => list.some((mark) => mark.id === id);
  const amend = (list: readonly Mark[]): readonly Mark[] =>
    list.map((mark) =>
      mark.id === id && mark.evidence !== null ? { ...mark, evidence: { ...mark.evidence, trace } } : mark,
    );
  if (has(state.marks)) return { ...state, marks: amend(state.marks) };
  return has(state.deletedMarks) ? { ...state, deletedMarks: amend(state.deletedMarks) } : state;
}

/** The same under another id and title, in every step. */
function copyOf(history: History<Experiment>, id: string): History<Experiment> {
  return amendHistory(history, (state) => ({ ...state, id, title: copyTitle(state.title) }));
}

/** The title of a copy; a copy of a copy is counted on. */
function copyTitle(title: string): string {
  const found = /^(.*) \(copy(?: (\d+))?\)$/.exec(title);
  return found === null ? `${title} (copy)` : `${found[1]} (copy ${Number(found[2] ?? 1) + 1})`;
}

/** What a short notice says of a failure; all of it, with what to do, stands where the listening was. */
function firstSentence(message: string): string {
  return /^.*?[.!?](?= |$)/.exec(message)?.[0] ?? message;
}
