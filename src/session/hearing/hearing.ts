import type { KnownTube } from '../../resonance/following/columnGuess.ts';
import type { Step } from '../../notebook/step.ts';
import type { CaptureSettings, CaptureState, SampleBlock, SoundSource } from '../../capture/soundSource.ts';
import type { Experiment, Fork } from '../../notebook/experiment.ts';
import type { LengthCheckRun } from './lengthCheckRun.ts';
import type { GainCheckRun } from './gainCheckRun.ts';
import { SourceRun } from './sourceRun.ts';
import type { Topic } from '../topics.ts';
import { RecentLevels } from './recentLevels.ts';
import { captureTrust, doubtsOf } from './captureTrust.ts';
import type { CaptureTrust } from './captureTrust.ts';
import { FlagMarking } from './flagMarking.ts';
import type { EarlierPresent } from './flagMarking.ts';
import { tellFound } from './tellFound.ts';
import type { WithheldFlag } from './withheldFlag.ts';
import { defaultToleranceHz } from './forkTolerance.ts';
import { gainCheckEnd } from './gainCheckEnd.ts';
import { knownTube } from './knownTube.ts';
import type { CreateListening, ListeningOrder } from './listeningLike.ts';
import type { ForkPitch, ListeningReport, ListeningUpdate, Resonance } from './listeningTypes.ts';
import type { Tell } from '../notice.ts';
import { matchCues } from '../recording/recordedMarks.ts';
import type { SoundKeeping, SoundRun } from './soundKeeping.ts';

/** What hearing needs of the session around it. */
export interface HearingOutside {
  now(): string;
  newId(): string;
  createListening: CreateListening;
  /** Loads what `createListening` needs; absent where it is there from the start. */
  loadListening?: () => Promise<unknown>;
  experiment(): Experiment;
  presentFork(): Fork;
  change(step: Step, make: (experiment: Experiment) => Experiment): boolean;
  /** Changes what the last step made, without a step of its own. */
  amend(make: (experiment: Experiment) => Experiment): void;
  /** Says so and gives true where another tab works on the experiment. */
  isOnlyShown(): boolean;
  /** Why a resonance was flagged, in one line for a person. */
  reasonOf(resonance: Resonance): string;
  tell: Tell;
  announce(topic: Topic): void;
}

/** What is heard: the run of a source, its checks, and what becomes of the flags. */
export class Hearing {
  capture: CaptureState = { kind: 'idle' };
  trace = new RecentLevels();
  report: ListeningReport | null = null;
  /** How much of a recording has been heard, 0..1; null while none is. */
  progress: number | null = null;
  /** The check of one length that goes on; null while none does. */
  check: LengthCheckRun | null = null;
  /** The gain check that goes on, or the one that just ended; null while there is none. */
  gainCheck: GainCheckRun | null = null;
  /** The microphone to listen to, by the browser's id; null for the system's choice. */
  microphoneId: string | null = null;
  /** Marks of this run at whose resonance's centre the column was said to be. */
  readonly centredMarks = new Set<string>();
  private listen: SourceRun | null = null;
  /** How many runs were begun or stopped: who has waited looks whether it is still wanted. */
  private turns = 0;
  /** What the browser last said of this run's processing; null where nothing can process the sound. */
  private settings: CaptureSettings | null = null;
  /** Makes marks of what this run flags; null before the first run. */
  private marking: FlagMarking | null = null;

  constructor(
    private readonly outside: HearingOutside,
    private readonly sound: SoundKeeping,
  ) {}

  get isListening(): boolean {
    return ['starting', 'running', 'interrupted'].includes(this.capture.kind);
  }

  /** The mark that stands for the resonance that was passed last; null before the first of this run. */
  get latestMark(): string | null {
    return this.marking?.latestMark ?? null;
  }

  get sourceKind(): SoundSource['kind'] | null {
    return this.listen?.source.kind ?? null;
  }

  /** Begins to listen to this source; a run that goes on is ended first. Failures arrive in `capture`. */
  async start(source: SoundSource): Promise<void> {
    if (this.outside.isOnlyShown()) return;
    this.stop();
    const { loadListening } = this.outside;
    if (loadListening !== undefined && !(await this.isLoaded(loadListening))) return;
    this.trace = new RecentLevels();
    this.marking = this.markingOf(source);
    this.settings = null;
    this.report = null;
    const tube = (): KnownTube | null => knownTube(this.outside.experiment());
    const create = (order: Omit<ListeningOrder, 'tube'>) => this.outside.createListening({ ...order, tube });
    const listen = new SourceRun(source, this.forkPitch(), create, {
      onUpdate: (update) => this.takeUpdate(update),
      onState: (state) => this.setCapture(state),
      onReport: (report) => this.takeReport(report),
      onBlock: (block) => this.takeBlock(block),
    });
    this.listen = listen;
    await listen.start();
  }

  stop(): void {
    this.turns += 1;
    this.listen?.stop();
    if (this.capture.kind === 'starting') this.setCapture({ kind: 'idle' });
  }

  /** Loads what listens. @returns false where it can't be had, which is told, or where nobody waits for it any more */
  private async isLoaded(load: () => Promise<unknown>): Promise<boolean> {
    const { turns } = this;
    this.listen = null;
    this.setCapture({ kind: 'starting' });
    try {
      await load();
    } catch (error) {
      const said = error instanceof Error ? error.message : String(error);
      const failure = { code: 'capture-broken', what: 'listening', said } as const;
      if (turns === this.turns) this.setCapture({ kind: 'failed', failure });
    }
    return turns === this.turns && this.capture.kind === 'starting';
  }

  /**
   * Begins to check the present length: until it ends, nothing is marked. Only while listening. What checks comes with
   * the first check.
   */
  async beginCheck(): Promise<void> {
    const { LengthCheckRun } = await import('./lengthCheckRun.ts');
    if (this.capture.kind !== 'running') return;
    this.check = new LengthCheckRun({ sampleRateHz: this.capture.sampleRateHz, fork: this.forkPitch() });
    this.outside.announce('capture');
  }

  endCheck(): void {
    this.check = null;
    this.outside.announce('capture');
  }

  /** Takes another microphone from the next start on; a run of the microphone ends. */
  chooseMicrophone(deviceId: string | null): void {
    this.microphoneId = deviceId;
    if (this.sourceKind === 'microphone') this.stop();
    this.outside.announce('capture');
  }

  /** Flags of this run that are no marks because the tone was gated away in them. */
  get withheld(): readonly WithheldFlag[] {
    return this.marking?.withheld ?? [];
  }

  /** Flags of this run that may be resonances: no marks until they recur or a person lets them in. */
  get maybes(): readonly WithheldFlag[] {
    return this.marking?.maybes ?? [];
  }

  /** Whether the resonance that was flagged last only may be one, and is no mark so far. */
  get isUndecided(): boolean {
    const newest = this.trace.resonances.at(-1);
    return newest !== undefined && this.maybes.some(({ resonance }) => resonance.timeS === newest.timeS);
  }

  /** How many resonances this run has found. What only may be one counts once it is a mark. */
  get found(): number {
    const isFound = ({ certainty, timeS }: Resonance): boolean =>
      certainty === 'sure' || this.marking?.hasMarkedMaybe(timeS) === true;
    return this.trace.resonances.filter(isFound).length;
  }

  /** Makes a mark of the newest flag that may be a resonance, if there is one. */
  keepMaybe(): void {
    this.letIn(this.maybes.slice(-1));
  }

  /** Makes marks of flags that were withheld, or may be resonances. */
  letIn(flags: readonly WithheldFlag[]): void {
    this.marking?.letIn(flags);
    this.outside.announce('capture');
  }

  /** How far levels of the present capture can be trusted. */
  get trust(): CaptureTrust {
    return captureTrust(this.settings, this.trace.warnings, this.outside.experiment().gainCheck ?? null);
  }

  /**
   * Begins to check whether something rewrites the level; nothing is marked meanwhile. Only while listening. What checks
   * comes with the first check.
   */
  async beginGainCheck(): Promise<void> {
    const { GainCheckRun } = await import('./gainCheckRun.ts');
    if (this.capture.kind !== 'running') return;
    this.check = null;
    this.gainCheck = new GainCheckRun();
    this.outside.announce('capture');
  }

  endGainCheck(): void {
    this.gainCheck = null;
    this.outside.announce('capture');
  }

  /** How much of a recording has been heard, 0..1. */
  setProgress(share: number): void {
    if (!this.isListening) return;
    this.progress = share;
    this.outside.announce('capture');
  }

  private takeBlock(block: SampleBlock): void {
    this.sound.push(block);
    if (this.check?.push(block) === true) this.outside.announce('capture');
  }

  private takeUpdate(heard: ListeningUpdate): void {
    const update = { ...heard, resonances: this.kept(heard.resonances) };
    this.trace.add(update);
    this.marking?.addPoints(update.points);
    this.sound.takeSoundings(update.soundings);
    // A recording is marked from what is detected offline, with both sides of each passage.
    if (this.sourceKind !== 'recording' && this.check === null) {
      for (const resonance of update.resonances) this.marking?.take(resonance);
    }
    this.followGainCheck(update);
    this.marking?.finishTraces(false);
    // What was told before a flag is of the resonance before.
    if (update.followed.length > 0) this.noteCentre();
    this.outside.announce('live');
  }

  private noteCentre(): void {
    const { wayBack } = this.trace;
    const mark = this.latestMark;
    // The way back leads to what was flagged last, which then is no mark.
    if (mark === null || this.isUndecided) return;
    if (wayBack.kind === 'here' && wayBack.by === 'centre') this.centredMarks.add(mark);
  }

  /** What may become a mark. A flag whose tone was gated away on its way here waits for a person to let it in. */
  private kept(resonances: readonly Resonance[], earlier?: EarlierPresent): readonly Resonance[] {
    if (resonances.length === 0 || (this.gainCheck !== null && !this.gainCheck.isOver)) return [];
    // Only a device or a browser gates; a recording and practice are as they are.
    const gated = this.settings === null ? [] : resonances.filter(({ isGated }) => isGated);
    if (gated.length === 0) return resonances;
    for (const resonance of gated) this.marking?.withhold(resonance, earlier);
    this.outside.announce('capture');
    return resonances.filter((resonance) => !gated.includes(resonance));
  }

  private followGainCheck({ points }: ListeningUpdate): void {
    const check = this.gainCheck;
    if (check === null || check.isOver || !check.push(points)) return;
    this.outside.announce('capture');
    const gainCheck = gainCheckEnd(check, this.outside.now(), this.settings?.deviceLabel ?? null);
    if (gainCheck === null) return;
    this.outside.change('gain check', (experiment) => ({ ...experiment, gainCheck }));
    if (gainCheck.verdict === 'steady') this.outside.tell('info', { code: 'gain-check-passed' });
    else this.outside.tell('problem', { code: 'gain-check-failed' });
  }

  /** Ends the sounding that a fault cut through. @returns whether one sounded */
  private voidSounding(): boolean {
    this.gainCheck?.restart();
    return this.trace.voidOpenSounding();
  }

  private takeReport(report: ListeningReport): void {
    this.report = report;
    if (this.sourceKind !== 'recording') return;
    this.trace.resonances = [...report.resonances];
    this.trace.soundings = [...report.soundings];
    const found = matchCues(report.resonances, this.listen?.source.cues ?? []);
    for (const mark of found) this.marking?.takeRecorded(mark);
    tellFound(report, this.outside);
  }

  private markingOf(source: SoundSource): FlagMarking {
    return new FlagMarking(source.kind, this.trace, {
      now: () => this.outside.now(),
      newId: () => this.outside.newId(),
      experiment: () => this.outside.experiment(),
      change: (step, make) => this.outside.change(step, make),
      amend: (make) => this.outside.amend(make),
      reasonOf: (resonance) => this.outside.reasonOf(resonance),
      doubts: () => doubtsOf(this.trust),
      onMark: (id, timeS) => this.sound.addMark(id, timeS),
      tell: (kind, news, holds) => this.outside.tell(kind, news, holds),
    });
  }

  private soundRun(sampleRateHz: number): SoundRun {
    return {
      experimentId: this.outside.experiment().id,
      source: this.sourceKind ?? 'microphone',
      forkHz: this.outside.presentFork().nominalHz,
      sampleRateHz,
    };
  }

  private forkPitch(): ForkPitch {
    const { nominalHz } = this.outside.presentFork();
    return { nominalHz, toleranceHz: defaultToleranceHz(nominalHz) };
  }

  /** Listens for the fork that is now in use, if at all. @param before  when the other one was */
  followFork(before: Experiment): void {
    if (!this.isListening) return;
    const { listen } = this;
    if (listen?.source.kind === 'recording') {
      this.outside.tell('info', { code: 'recording-heard-again' });
      void this.start(listen.source);
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
    const earlier = { present, endS };
    const experiment = this.outside.experiment();
    const isThere =
      experiment.id === id &&
      experiment.forks.some((fork) => fork.id === present.forkId) &&
      experiment.places.some((place) => place.id === present.placeId);
    if (!isThere || this.check !== null || this.kept([resonance], earlier).length === 0) return;
    this.trace.resonances.push(resonance);
    this.marking?.take(resonance, earlier);
    this.outside.announce('live');
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
    if (state.kind === 'failed') {
      const isVoid = this.voidSounding();
      this.outside.tell('problem', { code: 'listening-failed', failure: state.failure, isVoid });
    }
    if (state.kind === 'interrupted') {
      const isVoid = this.voidSounding();
      this.outside.tell('problem', { code: 'listening-held', hold: state.hold, isVoid });
    }
    this.outside.announce('capture');
  }
}
