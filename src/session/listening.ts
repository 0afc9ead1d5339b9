import type { SampleBlock } from '../capture/soundSource.ts';
import { LiveDetector } from '../resonance/passages/onlineDetector.ts';
import type { LiveFlag } from '../resonance/passages/onlineDetector.ts';
import { decayTimeS } from '../resonance/soundings.ts';
import { secondLook } from '../resonance/passages/offlineDetector.ts';
import { NOTHING, withOne } from '../resonance/shortList.ts';
import { LevelAgainstRoom } from '../room/levelRoomCorrelation.ts';
import { BroadbandMeter } from '../tone/broadbandMeter.ts';
import type { ToneSeries } from '../tone/toneSeries.ts';
import { ToneStream } from '../tone/toneStream.ts';
import { LevelTrace } from './levelTrace.ts';
import type {
  ForkPitch,
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
import { SoundingTrack } from './soundingTrack.ts';
import { toResonance } from './toResonance.ts';
import { WayBack } from './distanceToMaximum.ts';

/** Narrow values between two looks for soundings. */
const SOUNDING_STEP = 25;
/** The flanks around a value are complete this many values later. */
const LOOKAHEAD = 12;
/** Frames between two decisions: about 20 ms, however long the blocks are. */
const STEP_FRAMES = 1024;

const SILENCE = new Float32Array(STEP_FRAMES);

/**
 * Runs the stages on one source, live: samples in, level points, soundings, resonances and warnings out. All
 * decisions fall on fixed places of the time axis, so blocks of any size give the same result.
 */
export class Listening {
  readonly #options: { readonly sampleRateHz: number; readonly fork: ForkPitch };
  readonly #stream: ToneStream;
  readonly #series: ToneSeries;
  readonly #live: LiveDetector;
  readonly #trace: LevelTrace;
  readonly #track: SoundingTrack;
  readonly #againstRoom: LevelAgainstRoom;
  readonly #wayBack = new WayBack();
  readonly #broadband: BroadbandMeter;
  readonly #health: SignalHealth;
  /** Samples of the step that isn't complete yet, and how many of them the checks of the signal have had. */
  readonly #step = new Float32Array(STEP_FRAMES);
  #filled = 0;
  #checked = 0;
  /** Frames of all steps before. */
  #frames = 0;
  #nextSounding = SOUNDING_STEP;
  readonly #resonances: Resonance[] = [];
  readonly #told = new Set<string>();
  /** What a push adds, while it is gathered; null where there is nothing yet. */
  #newPoints: LevelPoint[] | null = null;
  #newResonances: Resonance[] | null = null;
  #newSoundings: Sounding[] | null = null;
  #newWarnings: ListeningWarning[] | null = null;

  /** @throws RangeError when the fork's pitch doesn't fit the sample rate */
  constructor(options: { readonly sampleRateHz: number; readonly fork: ForkPitch }) {
    this.#options = options;
    const { sampleRateHz, fork } = options;
    this.#stream = new ToneStream(sampleRateHz, fork.nominalHz);
    const { series } = this.#stream;
    this.#series = series;
    this.#health = new SignalHealth(sampleRateHz);
    this.#live = new LiveDetector(series, fork.toleranceHz);
    this.#trace = new LevelTrace(series);
    this.#track = new SoundingTrack(series, fork);
    this.#againstRoom = new LevelAgainstRoom(series);
    this.#broadband = new BroadbandMeter(sampleRateHz);
  }

  /** Everything heard so far, for checks and pictures. */
  get series(): ToneSeries {
    return this.#series;
  }

  /** Resonances flagged so far, in order of flagging. */
  get resonances(): readonly Resonance[] {
    return this.#resonances;
  }

  /** The fork's pitch as estimated so far, Hz; null before the first tone. */
  get forkHz(): number | null {
    return this.#live.offsetHz === null ? null : this.#options.fork.nominalHz + this.#live.offsetHz;
  }

  push(block: SampleBlock): ListeningUpdate {
    if (block.discontinuity) this.#bridgeGap(block.startFrame);
    this.#feed(block.samples, block.samples.length, true);
    return this.#update();
  }

  /** Lets the last values out. Nothing may be pushed afterwards. */
  finish(): ListeningUpdate {
    this.#hearStep();
    this.#stream.finish();
    this.#health.finish();
    this.#advance();
    return this.#update();
  }

  /** A better look at all that was heard, with time on both sides of everything. */
  secondLook(): ListeningReport {
    const { sampleRateHz, fork } = this.#options;
    const durationS = (this.#frames + this.#filled) / sampleRateHz;
    const liveTimesS = this.#resonances.map(({ timeS }) => timeS);
    const look = secondLook(this.#series, fork.toleranceHz, liveTimesS);
    const { rateHz } = this.#series;
    const soundings = look.soundings.map((span, i): Sounding => ({
      index: i + 1,
      startS: span.from / rateHz,
      // The narrow filter lets the last values out a little past the end.
      endS: Math.min(span.to / rateHz, durationS),
      decayTimeS: decayTimeS(this.#series, span),
      frequencyHz: span.pitch === null ? null : fork.nominalHz + span.pitch.offsetHz,
      frequencyStandardUncertaintyHz: span.pitch?.standardUncertaintyHz ?? null,
    }));
    const resonances = look.passages.map((passage) => toResonance(passage, soundings, null));
    const report = {
      durationS,
      sampleRateHz,
      fork: {
        nominalHz: fork.nominalHz,
        measuredHz: look.pitch === null ? null : fork.nominalHz + look.pitch.offsetHz,
        standardUncertaintyHz: look.pitch?.standardUncertaintyHz ?? null,
      },
      soundings,
      resonances,
    };
    const heard = {
      series: this.#series,
      largest: this.#health.largest,
      steadyTone: this.#stream.steadyTone,
      roomCorrelation: this.#againstRoom.correlation(),
    };
    return {
      ...report,
      warnings: [...this.#health.warnings(), ...listeningWarnings(report, fork, look, heard)],
    };
  }

  /**
   * Gathers samples to steps, and decides after each, so that decisions don't depend on the blocks.
   * @param isHeard  false: silence in place of lost sound, which the signal isn't judged by
   */
  #feed(samples: Float32Array, count: number, isHeard: boolean): void {
    for (let taken = 0; taken < count;) {
      const part = Math.min(count - taken, STEP_FRAMES - this.#filled);
      for (let i = 0; i < part; i += 1) this.#step[this.#filled + i] = samples[taken + i];
      taken += part;
      this.#filled += part;
      if (!isHeard) this.#checked = this.#filled;
      if (this.#filled < STEP_FRAMES) continue;
      this.#hearStep();
      this.#advance();
    }
  }

  /** Gives the step to all stages, complete or not. */
  #hearStep(): void {
    const isWhole = this.#filled === STEP_FRAMES;
    this.#checkSignal();
    if (isWhole) this.#broadband.push(this.#step);
    this.#stream.push(isWhole ? this.#step : this.#step.subarray(0, this.#filled));
    this.#frames += this.#filled;
    this.#filled = 0;
    this.#checked = 0;
  }

  #checkSignal(): void {
    const isWhole = this.#checked === 0 && this.#filled === STEP_FRAMES;
    if (isWhole) this.#health.push(this.#step);
    else if (this.#checked < this.#filled) {
      this.#health.push(this.#step.subarray(this.#checked, this.#filled));
    }
    this.#checked = this.#filled;
  }

  /** Lost frames are counted as silence, so that time never drifts, and marked, so that nothing spans them. */
  #bridgeGap(startFrame: number): void {
    const { sampleRateHz } = this.#options;
    const heard = this.#frames + this.#filled;
    this.#series.markGap(heard / sampleRateHz);
    this.#series.markGap(startFrame / sampleRateHz);
    this.#checkSignal();
    this.#health.interrupt();
    for (let left = Math.max(0, startFrame - heard); left > 0; left -= STEP_FRAMES) {
      this.#feed(SILENCE, Math.min(left, STEP_FRAMES), false);
    }
  }

  #advance(): void {
    this.#live.advance(this.#onFlag);
    const ready = this.#series.length - LOOKAHEAD;
    this.#trace.advance(ready, this.#live.offsetHz ?? 0, this.#broadband, this.#onPoint);
    this.#followSoundings(ready);
    this.#tell(this.#health.warnings());
    if (this.#series.gaps.length > 0) this.#tell(gapWarning(this.#series));
  }

  #update(): ListeningUpdate {
    const update = {
      points: this.#newPoints ?? NOTHING,
      resonances: this.#newResonances ?? NOTHING,
      soundings: this.#newSoundings ?? NOTHING,
      warnings: this.#newWarnings ?? NOTHING,
      guidance: this.#guidance(),
    };
    this.#newPoints = null;
    this.#newResonances = null;
    this.#newSoundings = null;
    this.#newWarnings = null;
    return update;
  }

  readonly #onFlag = ({ passage, decidedIndex }: LiveFlag): void => {
    const flaggedAtS = decidedIndex / this.#series.rateHz + this.#stream.delayS;
    const resonance = toResonance(passage, this.#track.soundings, flaggedAtS);
    this.#resonances.push(resonance);
    this.#newResonances = withOne(this.#newResonances, resonance);
  };

  readonly #onPoint = (point: LevelPoint): void => {
    this.#wayBack.push(point.timeS, this.#trace.coherentMeanSquare);
    this.#newPoints = withOne(this.#newPoints, point);
  };

  #followSoundings(ready: number): void {
    if (ready < this.#nextSounding || this.#live.offsetHz === null) return;
    while (this.#nextSounding <= ready) this.#nextSounding += SOUNDING_STEP;
    const before = this.#track.open?.index ?? null;
    let hasEnded = false;
    for (const sounding of this.#track.advance(this.#live.view)) {
      this.#newSoundings = withOne(this.#newSoundings, sounding);
      hasEnded ||= sounding.endS !== null;
    }
    if (hasEnded) this.#tell(pumpingSoFar(this.#series, this.#againstRoom.correlation()));
    if ((this.#track.open?.index ?? null) !== before) this.#wayBack.clear();
  }

  /** Each kind of warning once. */
  #tell(warnings: readonly ListeningWarning[]): void {
    for (const found of warnings) {
      if (found.code === 'silent' || this.#told.has(found.code)) continue;
      this.#told.add(found.code);
      this.#newWarnings = withOne(this.#newWarnings, found);
    }
  }

  #guidance(): Guidance | null {
    const { open } = this.#track;
    if (open === null) return null;
    return this.#wayBack.guide(this.#resonances, open, this.#track.decayTimeS);
  }
}
