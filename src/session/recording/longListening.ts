import type { SampleBlock } from '../../capture/soundSource.ts';
import type { ListeningLike } from '../hearing/listeningLike.ts';
import type {
  ListeningReport,
  ListeningUpdate,
  ListeningWarning,
  Resonance,
  Sounding,
} from '../hearing/listeningTypes.ts';

/** Age from which a listening gets a successor, s. */
const OLD_S = 180;
/** How long both hear the same before the successor may take over, s: it learns room and fork meanwhile. */
const TOGETHER_S = 40;
/** A tone that never rests (a loudspeaker’s) doesn't keep the old one for ever: only for so much longer, s. */
const LONGER_S = 720;

export interface LongListeningOptions {
  /** Number of the first sounding in the whole, >= 1. */
  readonly firstSounding?: number;
  /** Age from which a listening gets a successor, s, > 0. */
  readonly oldS?: number;
  /**
   * Asks each listening for its offline report when another takes over.
   * @param report  of all that it heard, on the source's time axis
   * @param untilS  when the next took over, on the same axis
   */
  readonly onReport?: (report: ListeningReport, untilS: number) => void;
}

interface Run {
  readonly listening: ListeningLike;
  /** Where it began on the source's time axis; null before its first block. */
  startFrame: number | null;
  /** Number that its first sounding has in the whole. */
  readonly firstSounding: number;
  soundings: number;
  isSounding: boolean;
}

/**
 * Listens for hours in bounded memory. A listening keeps all that it heard; when it is old, a second one begins to
 * hear the same, and takes over in a moment when no fork sounds. What it flagged before that was the old one's to flag.
 */
export class LongListening implements ListeningLike {
  private run: Run;
  private next: Run | null = null;

  /** @param create  makes a listening that hears from now on */
  constructor(
    private readonly sampleRateHz: number,
    private readonly create: () => ListeningLike,
    private readonly options: LongListeningOptions = {},
  ) {
    this.run = begin(create(), options.firstSounding ?? 1);
  }

  push(block: SampleBlock): ListeningUpdate {
    this.handOver(block.startFrame);
    const update = this.hear(this.run, block);
    if (this.next !== null) this.hear(this.next, block);
    return update;
  }

  finish(): ListeningUpdate {
    this.next = null;
    return this.onAxis(this.run, this.run.listening.finish());
  }

  /** Of what the present listening has heard: not of hours. */
  offlineReport(): ListeningReport {
    const { run } = this;
    const byS = this.beganS(run);
    const report = run.listening.offlineReport();
    const byIndex = run.firstSounding - 1;
    if (byS === 0 && byIndex === 0) return report;
    return {
      ...report,
      soundings: report.soundings.map((one) => shiftedSounding(one, byS, byIndex)),
      resonances: report.resonances.map((one) => shifted(one, byS, byIndex)),
      warnings: report.warnings.map((one) => shiftedWarning(one, byS)),
    };
  }

  /** When the present listening began, s on the source's time axis. */
  get presentSinceS(): number {
    return this.beganS(this.run);
  }

  private beganS({ startFrame }: Run): number {
    return (startFrame ?? 0) / this.sampleRateHz;
  }

  private handOver(frame: number): void {
    const { oldS = OLD_S, onReport } = this.options;
    const ageS = (frame - (this.run.startFrame ?? frame)) / this.sampleRateHz;
    if (this.next === null) {
      if (ageS < oldS) return;
      this.next = begin(this.create(), 1);
      return;
    }
    const togetherS = (frame - (this.next.startFrame ?? frame)) / this.sampleRateHz;
    const isAtRest = !this.run.isSounding && !this.next.isSounding;
    if (togetherS < TOGETHER_S || (!isAtRest && ageS < oldS + LONGER_S)) return;
    if (onReport !== undefined) {
      this.run.listening.finish();
      onReport(this.offlineReport(), frame / this.sampleRateHz);
    }
    this.next.listening.takeOver?.(this.run.listening, this.beganS(this.next) - this.beganS(this.run));
    // Its next sounding follows the last one of the old; those that both heard have their numbers already.
    const firstSounding = this.run.firstSounding + this.run.soundings - this.next.soundings;
    this.run = { ...this.next, firstSounding };
    this.next = null;
  }

  private hear(run: Run, block: SampleBlock): ListeningUpdate {
    // The first block of a listening has nothing before it to be lost.
    const isFirst = run.startFrame === null;
    run.startFrame ??= block.startFrame;
    const startFrame = block.startFrame - run.startFrame;
    const update = run.listening.push({
      ...block,
      startFrame,
      discontinuity: !isFirst && block.discontinuity,
    });
    const last = update.soundings.at(-1);
    if (last !== undefined) {
      run.soundings = Math.max(run.soundings, last.index);
      run.isSounding = last.endS === null;
    }
    return this.onAxis(run, update);
  }

  /** The run's own times and numbers as those of the whole. */
  private onAxis(run: Run, update: ListeningUpdate): ListeningUpdate {
    const byS = this.beganS(run);
    const byIndex = run.firstSounding - 1;
    if (byS === 0 && byIndex === 0) return update;
    return {
      points: update.points.map((point) => ({ ...point, timeS: point.timeS + byS })),
      resonances: update.resonances.map((resonance) => shifted(resonance, byS, byIndex)),
      soundings: update.soundings.map((sounding) => shiftedSounding(sounding, byS, byIndex)),
      warnings: update.warnings.map((warning) => shiftedWarning(warning, byS)),
      followed: update.followed.map((place) => ({ ...place, timeS: place.timeS + byS })),
      guidance:
        update.guidance === null ? null : { ...update.guidance, bestTimeS: update.guidance.bestTimeS + byS },
    };
  }
}

function begin(listening: ListeningLike, firstSounding: number): Run {
  return { listening, startFrame: null, firstSounding, soundings: 0, isSounding: false };
}

function shifted(resonance: Resonance, byS: number, byIndex: number): Resonance {
  return {
    ...resonance,
    timeS: resonance.timeS + byS,
    centre: resonance.centre === null ? null : { ...resonance.centre, timeS: resonance.centre.timeS + byS },
    halfPowerStartS: resonance.halfPowerStartS + byS,
    halfPowerEndS: resonance.halfPowerEndS + byS,
    ...(resonance.maybeS === undefined ? {} : { maybeS: resonance.maybeS + byS }),
    flaggedAtS: resonance.flaggedAtS === null ? null : resonance.flaggedAtS + byS,
    soundingIndex: resonance.soundingIndex === null ? null : resonance.soundingIndex + byIndex,
  };
}

const shiftedSounding = (sounding: Sounding, byS: number, byIndex: number): Sounding => ({
  ...sounding,
  index: sounding.index + byIndex,
  startS: sounding.startS + byS,
  endS: sounding.endS === null ? null : sounding.endS + byS,
});

function shiftedWarning(warning: ListeningWarning, byS: number): ListeningWarning {
  return warning.timeS === null ? warning : { ...warning, timeS: warning.timeS + byS };
}
