import type { Step } from '../../notebook/step.ts';
import type { SoundSource } from '../../capture/soundSource.ts';
import { amendTrace } from '../../notebook/amendTrace.ts';
import { hasColumn } from '../../marks/columnOfMark.ts';
import type { Mark, MarkEvidence } from '../../marks/mark.ts';
import { addMark, editMark, markNumber, waitingMarks } from '../../notebook/markList.ts';
import { newMark } from '../../notebook/newMark.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import { RepeatedPasses } from './repeatedPasses.ts';
import type { RecentLevels } from './recentLevels.ts';
import { LevelLog } from './levelLog.ts';
import type { LevelPoint, Resonance } from './listeningTypes.ts';
import { KEPT_AROUND_S, evidenceOf, evidenceTrace } from './markEvidence.ts';
import type { Tell } from '../notice.ts';
import { lengthOfLabel, locatedByOfLabel } from '../recording/recordedMarks.ts';
import type { RecordedMark } from '../recording/recordedMarks.ts';

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
  tell: Tell;
}

/** What is known beforehand of a mark. */
type Known = Partial<Pick<Mark, 'lengthM' | 'note' | 'locatedBy'>>;

/** Makes marks of what one run flags, or of what a recording holds, with their evidence. */
export class FlagMarking {
  private readonly log: LevelLog;
  private readonly repeats = new RepeatedPasses();
  /** Marks whose trace hasn't been heard to its end, with the time of their peak, s. */
  private readonly unfinishedTraces = new Map<string, number>();

  /** @param trace  of the same run */
  constructor(
    private readonly source: SoundSource['kind'],
    private readonly trace: RecentLevels,
    private readonly outside: FlagMarkingOutside,
  ) {
    this.log = new LevelLog(source === 'recording' ? Infinity : LIVE_TRACE_S);
  }

  /** Hears points of the level trace, before what was flagged on them. */
  addPoints(points: readonly LevelPoint[]): void {
    this.log.add(points);
  }

  /**
   * A mark that waits for its length, or a repeat of one.
   * @param known  what is known of it already
   * @param earlier  where something else has been measured since: what was, and until when
   */
  mark(
    resonance: Resonance,
    known: Known = {},
    earlier: { readonly present: Experiment['present']; readonly endS: number } | null = null,
  ): void {
    const { outside } = this;
    const present = earlier?.present ?? outside.experiment().present;
    const repeatOf = this.repeatedNow(resonance, present);
    const mark = {
      ...newMark(
        present,
        outside.newId(),
        outside.now(),
        this.evidence(resonance, this.source, earlier?.endS),
      ),
      ...(repeatOf === null ? {} : { repeatOf }),
      ...known,
    };
    if (!outside.change('flagged resonance', (experiment) => addMark(experiment, mark))) return;
    this.repeats.note(resonance, repeatOf ?? mark.id);
    if (earlier === null) this.unfinishedTraces.set(mark.id, resonance.timeS);
    outside.onMark(mark.id, resonance.timeS);
    if (this.source !== 'recording') this.tellOf(resonance, repeatOf);
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
      this.mark(resonance, this.knownOf(cue?.label ?? ''));
      return;
    }
    const evidence = this.evidence(resonance, 'recording');
    outside.change('listen again', (experiment) => editMark(experiment, old.id, { evidence }));
  }

  /** Gives marks the rest of their trace once it has been heard. @param isEnd  nothing more comes */
  finishTraces(isEnd: boolean): void {
    for (const [id, peakS] of [...this.unfinishedTraces]) {
      if (!isEnd && (this.log.latestS ?? 0) < peakS + KEPT_AROUND_S) continue;
      this.unfinishedTraces.delete(id);
      const trace = evidenceTrace(this.log, peakS);
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

  private evidence(resonance: Resonance, source: MarkEvidence['source'], endS?: number): MarkEvidence {
    const sounding = this.trace.soundings.find((one) => one.index === resonance.soundingIndex);
    const trace = evidenceTrace(this.log, resonance.timeS, endS);
    return evidenceOf(resonance, sounding, source, trace, this.outside.reasonOf(resonance));
  }

  private tellOf({ riseDb }: Resonance, repeatOf: string | null): void {
    const experiment = this.outside.experiment();
    if (repeatOf !== null) {
      const number = markNumber(experiment.marks, repeatOf);
      this.outside.tell('info', { code: 'resonance-again', riseDb, markNumber: number });
      return;
    }
    const waiting = waitingMarks(experiment).length;
    this.outside.tell(
      'info',
      { code: 'resonance-flagged', riseDb, waiting },
      (now) => waitingMarks(now).length === waiting,
    );
  }

  /** The mark that this flag passes again; null where it is new, or where that mark is gone. */
  private repeatedNow(resonance: Resonance, present: Experiment['present']): string | null {
    const id = this.repeats.repeated(resonance);
    const { marks } = this.outside.experiment();
    const mark = marks.find((one) => one.id === id);
    const isHere =
      mark !== undefined &&
      mark.forkId === present.forkId &&
      mark.placeId === present.placeId &&
      mark.ends === present.ends;
    return isHere ? mark.id : null;
  }
}
