import type { SampleBlock } from '../capture/soundSource.ts';
import { LiveDetector } from '../resonance/liveLook.ts';
import type { LiveFlag } from '../resonance/liveLook.ts';
import { decayTimeS } from '../resonance/soundings.ts';
import { secondLook } from '../resonance/secondLook.ts';
import { LevelAgainstRoom } from '../room/levelAgainstRoom.ts';
import { BROADBAND_FRAME, BroadbandMeter } from '../tone/broadbandMeter.ts';
import type { ToneSeries } from '../tone/toneSeries.ts';
import { ToneStream } from '../tone/toneStream.ts';
import { LevelTrace } from './levelTrace.ts';
import type { TracedPoint } from './levelTrace.ts';
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
import { WayBack } from './wayBack.ts';

/** Narrow values between two looks for soundings. */
const SOUNDING_STEP = 25;
/** The flanks around a value are complete this many values later. */
const LOOKAHEAD = 12;
/** Frames between two decisions: about 20 ms, however long the blocks are. */
const STEP_FRAMES = 1024;

/** What a push adds, while it is gathered. */
interface Gathered {
  readonly points: LevelPoint[];
  readonly resonances: Resonance[];
  readonly soundings: Sounding[];
  readonly warnings: ListeningWarning[];
}

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
  readonly #broadband = new BroadbandMeter();
  readonly #health: SignalHealth;
  /** Mean squares of full broadband frames, to be matched with points by time. */
  readonly #frameMeanSquares: number[] = [];
  readonly #frameS: number;
  #frames = 0;
  #nextSounding = SOUNDING_STEP;
  readonly #resonances: Resonance[] = [];
  readonly #told = new Set<string>();
  #gathered: Gathered = nothing();

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
    this.#frameS = BROADBAND_FRAME / sampleRateHz;
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
    this.#feed(block.samples);
    return this.#update();
  }

  /** Lets the last values out. Nothing may be pushed afterwards. */
  finish(): ListeningUpdate {
    this.#stream.finish();
    this.#health.finish();
    this.#advance();
    return this.#update();
  }

  /** A better look at all that was heard, with time on both sides of everything. */
  secondLook(): ListeningReport {
    const { sampleRateHz, fork } = this.#options;
    const liveTimesS = this.#resonances.map(({ timeS }) => timeS);
    const look = secondLook(this.#series, fork.toleranceHz, liveTimesS);
    const { rateHz } = this.#series;
    const soundings = look.soundings.map((span, i): Sounding => ({
      index: i + 1,
      startS: span.from / rateHz,
      endS: span.to / rateHz,
      decayTimeS: decayTimeS(this.#series, span),
      frequencyHz: span.pitch === null ? null : fork.nominalHz + span.pitch.offsetHz,
      frequencyStandardUncertaintyHz: span.pitch?.standardUncertaintyHz ?? null,
    }));
    const resonances = look.passages.map((passage) => toResonance(passage, soundings, null));
    const report = {
      durationS: this.#frames / sampleRateHz,
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

  /** Takes samples up to each fixed step and decides there, so that decisions don't depend on the blocks. */
  #feed(samples: Float32Array, isHeard = true): void {
    for (let taken = 0; taken < samples.length;) {
      const next = taken + STEP_FRAMES - (this.#frames % STEP_FRAMES);
      const part = taken === 0 && samples.length <= next ? samples : samples.subarray(taken, next);
      taken += part.length;
      if (isHeard) this.#health.push(part);
      this.#take(part);
      if (this.#frames % STEP_FRAMES === 0) this.#advance();
    }
  }

  #take(samples: Float32Array): void {
    for (let taken = 0; taken < samples.length;) {
      const part = this.#broadband.take(taken === 0 ? samples : samples.subarray(taken));
      taken += part;
      this.#frames += part;
      if (this.#frames % BROADBAND_FRAME === 0) this.#frameMeanSquares.push(this.#broadband.meanSquare);
    }
    this.#stream.push(samples);
  }

  /** Lost frames are counted as silence, so that time never drifts, and marked, so that nothing spans them. */
  #bridgeGap(startFrame: number): void {
    const { sampleRateHz } = this.#options;
    this.#series.markGap(this.#frames / sampleRateHz);
    this.#series.markGap(startFrame / sampleRateHz);
    this.#health.interrupt();
    for (let left = Math.max(0, startFrame - this.#frames); left > 0;) {
      const part = Math.min(left, sampleRateHz);
      this.#feed(new Float32Array(part), false);
      left -= part;
    }
  }

  #advance(): void {
    this.#live.advance(this.#onFlag);
    const ready = this.#series.length - LOOKAHEAD;
    this.#trace.advance(ready, this.#live.offsetHz ?? 0, this.#broadbandMeanSquare, this.#onPoint);
    this.#followSoundings(ready);
    this.#newWarnings();
  }

  #update(): ListeningUpdate {
    const { points, resonances, soundings, warnings } = this.#gathered;
    this.#gathered = nothing();
    return { points, resonances, soundings, warnings, guidance: this.#guidance() };
  }

  readonly #onFlag = ({ passage, decidedIndex }: LiveFlag): void => {
    const flaggedAtS = decidedIndex / this.#series.rateHz + this.#stream.delayS;
    const resonance = toResonance(passage, this.#track.soundings, flaggedAtS);
    this.#resonances.push(resonance);
    this.#gathered.resonances.push(resonance);
  };

  readonly #onPoint = ({ coherentMeanSquare, ...point }: TracedPoint): void => {
    this.#wayBack.push(point.timeS, coherentMeanSquare);
    this.#gathered.points.push(point);
  };

  /** Mean over full frames that overlap the stretch. */
  readonly #broadbandMeanSquare = (fromS: number, toS: number): number => {
    const from = Math.max(0, Math.floor(fromS / this.#frameS));
    const to = Math.min(this.#frameMeanSquares.length, Math.floor(toS / this.#frameS) + 1);
    let sum = 0;
    for (let i = from; i < to; i += 1) sum += this.#frameMeanSquares[i] as number;
    return sum / Math.max(1, to - from);
  };

  #followSoundings(ready: number): void {
    if (ready < this.#nextSounding || this.#live.offsetHz === null) return;
    while (this.#nextSounding <= ready) this.#nextSounding += SOUNDING_STEP;
    const before = this.#track.open?.index ?? null;
    const changed = this.#track.advance(this.#live.view);
    this.#gathered.soundings.push(...changed);
    if (changed.some(({ endS }) => endS !== null)) {
      this.#tell(pumpingSoFar(this.#series, this.#againstRoom.correlation()));
    }
    if ((this.#track.open?.index ?? null) !== before) this.#wayBack.clear();
  }

  #newWarnings(): void {
    this.#tell(this.#health.warnings());
    this.#tell(gapWarning(this.#series));
  }

  /** Each kind of warning once. */
  #tell(warnings: readonly ListeningWarning[]): void {
    for (const found of warnings) {
      if (found.code === 'silent' || this.#told.has(found.code)) continue;
      this.#told.add(found.code);
      this.#gathered.warnings.push(found);
    }
  }

  #guidance(): Guidance | null {
    const { open } = this.#track;
    if (open === null) return null;
    return this.#wayBack.guide(this.#resonances, open.startS, this.#track.decayTimeS);
  }
}

const nothing = (): Gathered => ({ points: [], resonances: [], soundings: [], warnings: [] });
