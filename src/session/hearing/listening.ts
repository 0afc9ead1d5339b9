import { ANALYSIS_BLOCK } from '../../capture/signal/analysisBlock.ts';
import type { SampleBlock } from '../../capture/soundSource.ts';
import { decayTimeS } from '../../resonance/decayTime.ts';
import { detectOffline } from '../../resonance/passages/offlineDetector.ts';
import type { FollowedPlace } from '../../resonance/following/followedPlace.ts';
import type { CentreMoment } from '../../resonance/following/passRun.ts';
import type { DetectedPassage } from '../../resonance/passages/detectedPassage.ts';
import { isGatedAway } from '../../resonance/passages/gatedTone.ts';
import { HurriedPassages } from '../../resonance/passages/hurriedPassages.ts';
import { OnlineDetector } from '../../resonance/passages/onlineDetector.ts';
import type { OnlineFlag } from '../../resonance/passages/onlineDetector.ts';
import { LevelRoomCorrelation } from '../../room/levelRoomCorrelation.ts';
import { BroadbandMeter } from '../../tone/broadbandMeter.ts';
import type { ToneSeries } from '../../tone/toneSeries.ts';
import { ToneStream } from '../../tone/toneStream.ts';
import type { ColumnFollowing } from './columnFollowing.ts';
import { LevelBelowMaximum } from './levelBelowMaximum.ts';
import { LevelTrace } from './levelTrace.ts';
import type { ListeningLike } from './listeningLike.ts';
import type {
  Guidance,
  LevelPoint,
  ListeningReport,
  ListeningUpdate,
  ListeningWarning,
  Resonance,
  Sounding,
} from './listeningTypes.ts';
import { gapWarning, listeningWarnings, pumpingSoFar } from './listeningWarnings.ts';
import { SignalHealth } from './signalHealth.ts';
import type { ListeningOptions } from './listeningOptions.ts';
import { SIDE_BAND_DELAY, SOUNDING_STEP, SoundingTrack } from './soundingTrack.ts';
import { soundingOf, resonanceOfPassage } from './resonanceOfPassage.ts';
import { withoutMaybe } from './withoutMaybe.ts';

/**
 * Runs the stages on one source, live: samples in, level points, soundings, resonances and warnings out. All
 * decisions fall on fixed places of the time axis, so blocks of any size give the same result.
 */
export class Listening implements ListeningLike {
  private readonly options: ListeningOptions;
  private readonly stream: ToneStream;
  /** Everything heard so far, for checks and pictures. */
  readonly series: ToneSeries;
  private readonly detector: OnlineDetector;
  private readonly hurried = new HurriedPassages();
  private readonly trace: LevelTrace;
  private readonly track: SoundingTrack;
  private readonly roomCorrelation: LevelRoomCorrelation;
  private readonly distance = new LevelBelowMaximum();
  private readonly broadband: BroadbandMeter;
  private readonly health: SignalHealth;
  /** Samples of the block that isn't complete yet, and how many of them the checks of the signal have had. */
  private readonly block = new Float32Array(ANALYSIS_BLOCK);
  private filled = 0;
  private checked = 0;
  /** Frames of all blocks before. */
  private frames = 0;
  private nextSounding = SOUNDING_STEP;
  private flagged: readonly Resonance[] = [];
  /** null before the first flag. */
  private following: ColumnFollowing | null = null;
  private readonly told = new Set<string>();
  /** What a push adds, while it is gathered. */
  private added = nothingAdded();

  /** @throws RangeError when the fork's frequency doesn't fit the sample rate */
  constructor(options: ListeningOptions) {
    this.options = options;
    const { sampleRateHz, fork } = options;
    this.stream = new ToneStream(sampleRateHz, fork.nominalHz);
    const { series } = this.stream;
    this.series = series;
    this.health = new SignalHealth(sampleRateHz);
    this.detector = new OnlineDetector(series, fork.toleranceHz);
    this.broadband = new BroadbandMeter(sampleRateHz);
    this.trace = new LevelTrace(series, this.broadband);
    this.track = new SoundingTrack(series, fork);
    this.roomCorrelation = new LevelRoomCorrelation(series);
  }

  /** Resonances flagged so far, in order of flagging. */
  get resonances(): readonly Resonance[] {
    return this.flagged;
  }

  /** The fork's frequency as estimated so far, Hz; null before the first tone. */
  get forkHz(): number | null {
    const { offsetHz } = this.detector;
    return offsetHz === null ? null : this.options.fork.nominalHz + offsetHz;
  }

  push(block: SampleBlock): ListeningUpdate {
    if (block.discontinuity) this.bridgeGap(block.startFrame);
    this.feed(block.samples, true);
    return this.update();
  }

  /** Lets the last values out. Nothing may be pushed afterwards. */
  finish(): ListeningUpdate {
    this.takeBlock();
    this.stream.finish();
    this.health.finish();
    this.advance();
    return this.update();
  }

  /** @see ListeningLike */
  takeOver(before: ListeningLike, beganS: number): void {
    if (!(before instanceof Listening)) return;
    // What this one has begun to follow itself is newer.
    this.following ??= before.following?.handedTo(this.series, beganS) ?? null;
  }

  /** What all that was heard shows, detected with time on both sides of everything. */
  offlineReport(): ListeningReport {
    const { sampleRateHz, fork } = this.options;
    const durationS = (this.frames + this.filled) / sampleRateHz;
    const found = detectOffline(this.series, fork.toleranceHz, this.detector.scores);
    const { rateHz } = this.series;
    const soundings = found.soundings.map(({ from, to, frequency }, i): Sounding => ({
      index: i + 1,
      startS: from / rateHz,
      // The narrow filter lets the last values out a little past the end.
      endS: Math.min(to / rateHz, durationS),
      decayTimeS: decayTimeS(this.series.segment(from, to)),
      frequencyHz: frequency === null ? null : fork.nominalHz + frequency.offsetHz,
      frequencyStandardUncertaintyHz: frequency?.standardUncertaintyHz ?? null,
    }));
    const resonances = found.passages.map((passage) =>
      resonanceOfPassage(passage, soundings, this.centreOf(passage, found.offsetHz, soundings), null),
    );
    const report = {
      durationS,
      sampleRateHz,
      fork: {
        nominalHz: fork.nominalHz,
        measuredHz: found.frequency === null ? null : fork.nominalHz + found.frequency.offsetHz,
        standardUncertaintyHz: found.frequency?.standardUncertaintyHz ?? null,
      },
      soundings,
      resonances,
    };
    const heard = {
      series: this.series,
      largest: this.health.largest,
      steadyTone: this.stream.steadyTone,
      roomCorrelation: this.roomCorrelation.correlation(),
    };
    return {
      ...report,
      warnings: [...this.health.warnings(), ...listeningWarnings(report, fork, found, heard)],
    };
  }

  /**
   * Gathers samples to blocks, and decides after each, so that decisions don't depend on how the samples came.
   * @param isHeard  false: silence in place of lost sound, which the signal isn't judged by
   */
  private feed(samples: Float32Array, isHeard: boolean): void {
    for (let taken = 0; taken < samples.length;) {
      const part = Math.min(samples.length - taken, ANALYSIS_BLOCK - this.filled);
      this.block.set(samples.subarray(taken, taken + part), this.filled);
      taken += part;
      this.filled += part;
      if (!isHeard) this.checked = this.filled;
      if (this.filled < ANALYSIS_BLOCK) continue;
      this.takeBlock();
      this.advance();
    }
  }

  /** Gives the block to all stages, complete or not. */
  private takeBlock(): void {
    this.checkSignal();
    if (this.filled === ANALYSIS_BLOCK) this.broadband.push(this.block);
    this.stream.push(this.block.subarray(0, this.filled));
    this.frames += this.filled;
    this.filled = 0;
    this.checked = 0;
  }

  private checkSignal(): void {
    this.health.push(this.block.subarray(this.checked, this.filled));
    this.checked = this.filled;
  }

  /** Lost frames are counted as silence, so that time never drifts, and marked, so that nothing spans them. */
  private bridgeGap(startFrame: number): void {
    const { sampleRateHz } = this.options;
    const heard = this.frames + this.filled;
    this.series.markGap(heard / sampleRateHz);
    this.series.markGap(startFrame / sampleRateHz);
    this.checkSignal();
    this.health.interrupt();
    const silence = new Float32Array(ANALYSIS_BLOCK);
    for (let left = Math.max(0, startFrame - heard); left > 0; left -= ANALYSIS_BLOCK) {
      this.feed(silence.subarray(0, Math.min(left, ANALYSIS_BLOCK)), false);
    }
  }

  private advance(): void {
    const flags = this.detector.advance((candidates, view, strongest) =>
      this.hurried.look(candidates, view, strongest),
    );
    for (const flag of flags) this.flag(flag);
    // Said each time: it is about what the hand just did.
    for (const hurried of this.hurried.take(flags, this.series.length / this.series.rateHz)) {
      this.added.warnings.push({ code: 'slide-too-fast', ...hurried });
    }
    const ready = this.series.length - SIDE_BAND_DELAY;
    for (const { point, coherentMeanSquare } of this.trace.advance(ready, this.detector.offsetHz ?? 0)) {
      this.distance.push(point.timeS, coherentMeanSquare);
      this.added.points.push(point);
    }
    this.followSoundings(ready);
    if (this.following !== null) this.added.followed.push(...this.following.advance());
    this.tell(this.health.warnings());
    if (this.series.gaps.length > 0) this.tell(gapWarning(this.series));
  }

  private update(): ListeningUpdate {
    const update = { ...this.added, guidance: this.guidance() };
    this.added = nothingAdded();
    return update;
  }

  private flag({ passage, decidedIndex, maybeS }: OnlineFlag): void {
    const flaggedAtS = decidedIndex / this.series.rateHz + this.stream.delayS;
    const { soundings } = this.track;
    const offsetHz = this.detector.offsetHz ?? 0;
    this.following ??= this.options.follow?.(this.series) ?? null;
    const isFollowed = this.following?.isNear ?? undefined;
    const centre =
      this.following?.flag(passage, offsetHz, this.track.open) ?? this.centreOf(passage, offsetHz, soundings);
    const found = {
      ...resonanceOfPassage(passage, soundings, centre, flaggedAtS),
      ...(isFollowed === undefined ? {} : { isFollowed }),
      ...(maybeS === null ? {} : { maybeS }),
    };
    const resonance = isGatedAway(this.series, passage) ? { ...found, isGated: true as const } : found;
    this.flagged = [...withoutMaybe(this.flagged, maybeS), resonance];
    this.added.resonances.push(resonance);
  }

  private centreOf(
    passage: DetectedPassage,
    offsetHz: number,
    soundings: readonly Sounding[],
  ): CentreMoment | null {
    const own = soundingOf(passage.timeS, soundings);
    return own === undefined ? null : (this.options.centreOf?.(this.series, passage, offsetHz, own) ?? null);
  }

  private followSoundings(ready: number): void {
    if (ready < this.nextSounding || this.detector.offsetHz === null) return;
    while (this.nextSounding <= ready) this.nextSounding += SOUNDING_STEP;
    const before = this.track.open?.index ?? null;
    const changed = this.track.advance(this.detector.view);
    this.added.soundings.push(...changed);
    if (changed.some(({ endS }) => endS !== null)) {
      this.tell(pumpingSoFar(this.series, this.roomCorrelation.correlation()));
    }
    if ((this.track.open?.index ?? null) !== before) this.distance.clear();
    this.following?.followSounding(this.track.open, ready / this.series.rateHz);
  }

  /** Each kind of warning once. */
  private tell(warnings: readonly ListeningWarning[]): void {
    for (const found of warnings) {
      if (found.code === 'silent' || this.told.has(found.code)) continue;
      this.told.add(found.code);
      this.added.warnings.push(found);
    }
  }

  private guidance(): Guidance | null {
    const { open } = this.track;
    if (open === null) return null;
    return this.distance.guide(this.flagged, open, this.track.decayTimeS);
  }
}

const nothingAdded = () => ({
  points: [] as LevelPoint[],
  resonances: [] as Resonance[],
  soundings: [] as Sounding[],
  warnings: [] as ListeningWarning[],
  followed: [] as FollowedPlace[],
});
