import type { Step } from '../../notebook/step.ts';
import type { SoundSource } from '../../capture/soundSource.ts';
import { amendTrace } from '../../notebook/amendTrace.ts';
import { hasColumn } from '../../marks/columnOfMark.ts';
import type { LevelStretch, Mark, MarkDoubt, MarkEvidence } from '../../marks/mark.ts';
import { addMark, editMark, markNumber, waitingMarks } from '../../notebook/markList.ts';
import { MarkIndex } from '../../marks/markIndex.ts';
import { newMark } from '../../notebook/newMark.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import { isRecurring, RepeatedPasses } from './repeatedPasses.ts';
import type { StandingFor, Repeat } from './repeatedPasses.ts';
import type { RecentLevels } from './recentLevels.ts';
import { LevelLog } from './levelLog.ts';
import type { LevelPoint, Resonance } from './listeningTypes.ts';
import { KEPT_AROUND_S, evidenceOf, evidenceTrace } from './markEvidence.ts';
import type { Tell } from '../notice.ts';
import { lengthOfLabel, locatedByOfLabel } from '../recording/recordedMarks.ts';
import type { RecordedMark } from '../recording/recordedMarks.ts';
import type { WithheldFlag } from './withheldFlag.ts';

/** Of a live run's level trace so much is kept for marks to take from, s. */
const LIVE_TRACE_S = 120;

export interface FlagMarkingOutside {
  now(): string;
  newId(): string;
  experiment(): Experiment;
  /** Makes a change that can be undone. @returns false where it was refused */
  change(step: Step, make: (experiment: Experiment) => Experiment): boolean;
  /** Makes the same change in every step. */
  amend(make: (experiment: Experiment) => Experiment): void;
  /** A mark was made of a resonance. @param timeS  of its peak on the run's time axis */
  onMark(id: string, timeS: number): void;
  /** Why a resonance was flagged, in one line for a person: it is kept with the mark. */
  reasonOf(resonance: Resonance): string;
  /** What speaks against the sound now: it is kept with the mark. */
  doubts(): readonly MarkDoubt[];
  tell: Tell;
}

/** Where something else has been measured since: what was, and until when. */
export interface EarlierPresent {
  readonly present: Experiment['present'];
  readonly endS: number;
}

/** What is known beforehand of a mark. */
type Known = Partial<Pick<Mark, 'lengthM' | 'note' | 'locatedBy'>>;

/** Makes marks of what one run flags, or of what a recording holds, with their evidence. */
export class FlagMarking {
  private readonly log: LevelLog;
  private readonly repeats = new RepeatedPasses();
  /** Marks whose trace hasn't been heard to its end, with the time of their peak, s. */
  private readonly unfinishedTraces = new Map<string, number>();
  private held: readonly WithheldFlag[] = [];
  /** When the level peaked of those that only may be resonances and are marks all the same, s. */
  private readonly markedMaybes = new Set<number>();

  /** @param trace  of the same run */
  constructor(
    private readonly source: SoundSource['kind'],
    private readonly trace: RecentLevels,
    private readonly outside: FlagMarkingOutside,
  ) {
    this.log = new LevelLog(source === 'recording' ? Infinity : LIVE_TRACE_S);
  }

  /** The mark that stands for the resonance that was flagged last; null before the first. */
  get latestMark(): string | null {
    return this.repeats.standsFor;
  }

  /** Whether what only may be a resonance has become a mark. @param timeS  of its peak */
  hasMarkedMaybe(timeS: number): boolean {
    return this.markedMaybes.has(timeS);
  }

  /** Hears points of the level trace, before what was flagged on them. */
  addPoints(points: readonly LevelPoint[]): void {
    this.log.add(points);
  }

  /**
   * A mark of what is sure. What may be a resonance waits, until it recurs on the way back or a person says so.
   * @param earlier  where something else has been measured since
   */
  take(resonance: Resonance, earlier: EarlierPresent | null = null): void {
    // It was marked as a maybe already.
    if (resonance.maybeS !== undefined && this.markedMaybes.has(resonance.maybeS)) return;
    this.held = this.held.filter(
      ({ why, resonance: { timeS } }) => why === 'gated' || timeS !== resonance.maybeS,
    );
    const before = this.maybes.at(-1);
    // The slide comes back through what it passed last.
    const isMet =
      before !== undefined && this.isNewest(before.resonance) && isRecurring(before.resonance, resonance);
    if (isMet) this.letIn([before]);
    const present = earlier?.present ?? this.outside.experiment().present;
    const isKnown = this.repeats.repeated(resonance, this.standingFor(present)) !== null;
    if (resonance.certainty === 'sure' || isKnown) this.mark(resonance, {}, earlier, !isMet);
    else this.holdMaybe(resonance, earlier);
  }

  private isNewest({ timeS }: Resonance): boolean {
    return timeS > (this.repeats.latestS ?? -Infinity);
  }

  /**
   * A mark that waits for its length, or a repeat of one.
   * @param known  what is known of it already
   * @param isNews  whether it is told
   */
  mark(resonance: Resonance, known: Known = {}, earlier: EarlierPresent | null = null, isNews = true): void {
    const { outside } = this;
    const present = earlier?.present ?? outside.experiment().present;
    const repeat = this.repeats.repeated(resonance, this.standingFor(present));
    const mark = {
      ...newMark(
        present,
        outside.newId(),
        outside.now(),
        this.evidence(resonance, this.source, outside.doubts(), earlier?.endS),
      ),
      ...(repeat === null ? {} : { repeatOf: repeat.markId }),
      ...known,
    };
    if (!outside.change('flagged resonance', (experiment) => addMark(experiment, mark))) return;
    this.repeats.note(resonance, mark.id, repeat?.markId ?? mark.id);
    if (earlier === null) this.unfinishedTraces.set(mark.id, resonance.timeS);
    if (resonance.certainty === 'maybe') this.markedMaybes.add(resonance.timeS);
    outside.onMark(mark.id, resonance.timeS);
    if (isNews && this.source !== 'recording') this.tellOf(resonance, repeat);
  }

  /** Flags of this run and the open experiment in which the tone was gated away, oldest first. */
  get withheld(): readonly WithheldFlag[] {
    return this.heldHere.filter(({ why }) => why === 'gated');
  }

  /** Those that only may be resonances, oldest first. */
  get maybes(): readonly WithheldFlag[] {
    return this.heldHere.filter(({ why }) => why === 'maybe');
  }

  private get heldHere(): readonly WithheldFlag[] {
    const { id, forks, places } = this.outside.experiment();
    return this.held.filter(
      ({ experimentId, mark }) =>
        experimentId === id &&
        forks.some((fork) => fork.id === mark.forkId) &&
        places.some((place) => place.id === mark.placeId),
    );
  }

  /** Keeps a flag apart in which the tone was gated away. */
  withhold(resonance: Resonance, earlier: EarlierPresent | null = null): void {
    this.hold(resonance, 'gated', earlier);
    this.outside.tell('problem', { code: 'flag-withheld' });
  }

  /** Keeps apart what only may be a resonance, and says so: nothing is asked. */
  private holdMaybe(resonance: Resonance, earlier: EarlierPresent | null): void {
    this.hold(resonance, 'maybe', earlier);
    if (this.source === 'recording') return;
    const { timeS, confidence } = resonance;
    const isHeld = (): boolean => this.maybes.some((flag) => flag.resonance.timeS === timeS);
    this.outside.tell('info', { code: 'resonance-maybe', timeS, confidence }, isHeld);
  }

  /** Keeps a flag apart, with all that its mark would hold, until a person lets it in. */
  private hold(resonance: Resonance, why: WithheldFlag['why'], earlier: EarlierPresent | null): void {
    const { outside } = this;
    const experiment = outside.experiment();
    const doubts: readonly MarkDoubt[] = [
      ...outside.doubts(),
      ...(why === 'gated' ? (['suppressed'] as const) : []),
    ];
    const evidence = this.evidence(resonance, this.source, doubts, earlier?.endS);
    const mark = newMark(earlier?.present ?? experiment.present, outside.newId(), outside.now(), evidence);
    this.held = [...this.held, { why, experimentId: experiment.id, resonance, mark }];
    if (earlier === null) this.unfinishedTraces.set(mark.id, resonance.timeS);
  }

  /** Makes marks of flags that were kept apart, each with its doubt: now they wait for their lengths, too. */
  letIn(flags: readonly WithheldFlag[]): void {
    const ids = flags.map(({ mark }) => mark.id);
    for (const flag of this.heldHere.filter(({ mark }) => ids.includes(mark.id))) {
      const { mark, resonance } = flag;
      if (!this.outside.change('flagged resonance', (experiment) => addMark(experiment, mark))) return;
      this.held = this.held.filter((other) => other !== flag);
      if (flag.why === 'maybe') {
        this.markedMaybes.add(resonance.timeS);
        // An older one isn't what the slide comes back through.
        if (this.isNewest(resonance)) this.repeats.note(resonance, mark.id, mark.id);
      }
      this.outside.onMark(mark.id, resonance.timeS);
      if (this.source !== 'recording') this.tellOf(resonance, null);
    }
  }

  /** Marks what a recording holds; what it has marked itself keeps its length, or renews the mark it belongs to. */
  takeRecorded({ resonance: heard, cue, centre }: RecordedMark): void {
    const { outside } = this;
    const old = outside.experiment().marks.find((mark) => mark.id === cue?.markId);
    if (old !== undefined && heard === null) return;
    // What can't be told now may have been told when the sound was heard first.
    const before = old?.evidence?.source === 'recording' ? old.evidence.centre : null;
    const resonance = heard === null ? null : { ...heard, centre: heard.centre ?? centre ?? before ?? null };
    if (resonance === null) {
      const mark = {
        ...newMark(outside.experiment().present, outside.newId(), outside.now(), null),
        ...this.knownOf(cue?.label ?? ''),
        note: cue?.label ?? '',
      };
      outside.change('recording mark', (experiment) => addMark(experiment, mark));
      return;
    }
    if (old === undefined) {
      if (cue === null) this.take(resonance);
      else this.mark(resonance, this.knownOf(cue.label));
      return;
    }
    const evidence = this.evidence(resonance, 'recording', []);
    outside.change('listen again', (experiment) => editMark(experiment, old.id, { evidence }));
  }

  /** Gives marks the rest of their trace once it has been heard. @param isEnd  nothing more comes */
  finishTraces(isEnd: boolean): void {
    for (const [id, peakS] of [...this.unfinishedTraces]) {
      if (!isEnd && (this.log.latestS ?? 0) < peakS + KEPT_AROUND_S) continue;
      this.unfinishedTraces.delete(id);
      const trace = evidenceTrace(this.log, peakS);
      this.held = this.held.map((flag) => (flag.mark.id === id ? withTrace(flag, trace) : flag));
      this.outside.amend((state) => amendTrace(state, id, trace));
    }
  }

  /** What a label says of a mark: its length, or the label itself where this rule's zero offset leaves no column of it. */
  private knownOf(label: string): Known {
    const lengthM = lengthOfLabel(label);
    if (lengthM === null) return {};
    const { zeroOffsetM } = this.outside.experiment().rule;
    if (!hasColumn(lengthM, zeroOffsetM)) return { note: label };
    const locatedBy = locatedByOfLabel(label);
    return locatedBy === null ? { lengthM } : { lengthM, locatedBy };
  }

  private evidence(
    resonance: Resonance,
    source: MarkEvidence['source'],
    doubt: readonly MarkDoubt[],
    endS?: number,
  ): MarkEvidence {
    const sounding = this.trace.soundings.find((one) => one.index === resonance.soundingIndex);
    const trace = evidenceTrace(this.log, resonance.timeS, endS);
    const evidence = evidenceOf(resonance, sounding, source, trace, this.outside.reasonOf(resonance));
    return doubt.length === 0 ? evidence : { ...evidence, doubt };
  }

  private tellOf({ riseDb }: Resonance, repeat: Repeat | null): void {
    const experiment = this.outside.experiment();
    if (repeat !== null) {
      const code = repeat.how === 'followed' ? 'resonance-joined' : 'resonance-again';
      const number = markNumber(experiment, repeat.markId);
      this.outside.tell('info', { code, riseDb, markNumber: number });
      return;
    }
    const waiting = waitingMarks(experiment).length;
    this.outside.tell(
      'info',
      { code: 'resonance-flagged', riseDb, waiting },
      (now) => waitingMarks(now).length === waiting,
    );
  }

  /** @param present  what is measured when the flag comes */
  private standingFor(present: Experiment['present']): StandingFor {
    const index = new MarkIndex(this.outside.experiment().marks);
    return (markIds) => {
      const found = markIds.map((id) => index.find(id)).find((mark) => mark !== null);
      if (found === undefined) return null;
      const { id, forkId, placeId, ends } = index.repeated(found) ?? found;
      const isHere = forkId === present.forkId && placeId === present.placeId && ends === present.ends;
      return isHere ? id : null;
    };
  }
}

function withTrace(flag: WithheldFlag, trace: LevelStretch | null): WithheldFlag {
  const { evidence } = flag.mark;
  return evidence === null ? flag : { ...flag, mark: { ...flag.mark, evidence: { ...evidence, trace } } };
}
