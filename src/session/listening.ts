import type { SampleBlock } from '../capture/soundSource.ts';
import { LiveDetector, LOOKAHEAD } from '../resonance/liveLook.ts';
import { findSoundings, decayTimeS, soundingPitch } from '../resonance/soundings.ts';
import { secondLook, typicalNoise } from '../resonance/secondLook.ts';
import { smoothedPower } from '../resonance/passageEvidence.ts';
import { viewOf } from '../resonance/toneView.ts';
import { RoomBaseline } from '../room/roomBaseline.ts';
import { BROADBAND_FRAME, BroadbandMeter } from '../tone/broadbandMeter.ts';
import { levelDb } from '../tone/level.ts';
import { ToneSeries } from '../tone/toneSeries.ts';
import { ToneStream } from '../tone/toneStream.ts';
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
import { gapWarning, listeningWarnings } from './listeningWarnings.ts';
import { SignalHealth } from './signalHealth.ts';
import { toResonance } from './toResonance.ts';

/** Narrow values between two level points: 20 points a second. */
const POINT_STEP = 5;
/** Half of the values that make one level: 0.2 s, a noise bandwidth of 5 Hz. */
const POINT_HALF = 10;
/** Tone over noise power below which the tone is not heard: one chance in 1000 that noise alone is above. */
const HEARD = Math.log(1000);
/** Narrow values between two looks for soundings, and how much of the past they see. */
const SOUNDING_STEP = 25;
const SOUNDING_PAST_S = 30;
/** Frames between two decisions: about 20 ms, however long the blocks are. */
const STEP_FRAMES = 1024;

type Step = Omit<ListeningUpdate, 'guidance'>;

/**
 * Runs the stages on one source, live: samples in, level points, soundings, resonances and warnings out. All
 * decisions fall on fixed places of the time axis, so blocks of any size give the same result.
 */
export class Listening {
  readonly #options: { readonly sampleRateHz: number; readonly fork: ForkPitch };
  readonly #stream: ToneStream;
  readonly #series: ToneSeries;
  readonly #live: LiveDetector;
  readonly #room = new RoomBaseline();
  readonly #broadband = new BroadbandMeter();
  readonly #health: SignalHealth;
  /** Mean squares of full broadband frames, to be matched with points by time. */
  readonly #frameMeanSquares: number[] = [];
  readonly #frameS: number;
  #frames = 0;
  #nextPoint = POINT_HALF;
  #nextSounding = SOUNDING_STEP;
  #flanksSeen = 0;
  #toneHeard = false;
  #soundings: Sounding[] = [];
  readonly #resonances: Resonance[] = [];
  readonly #told = new Set<string>();

  /** @throws RangeError when the fork's pitch doesn't fit the sample rate */
  constructor(options: { readonly sampleRateHz: number; readonly fork: ForkPitch }) {
    this.#options = options;
    const { sampleRateHz, fork } = options;
    let series: ToneSeries | null = null;
    this.#stream = new ToneStream(sampleRateHz, fork.nominalHz, {
      onValue: (re, im) => series?.pushValue(re, im),
      onFlanks: (frame) => series?.pushFlanks(frame),
    });
    series = new ToneSeries(this.#stream.narrowRateHz, this.#stream.narrowBandwidthHz);
    this.#series = series;
    this.#health = new SignalHealth(sampleRateHz);
    this.#live = new LiveDetector(series, fork.toleranceHz);
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
    const steps = block.discontinuity ? this.#bridgeGap(block.startFrame) : [];
    steps.push(...this.#feed(block.samples));
    return this.#update(steps);
  }

  /** Lets the last values out. Nothing may be pushed afterwards. */
  finish(): ListeningUpdate {
    this.#stream.finish();
    this.#health.finish();
    return this.#update([this.#advance()]);
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
    const resonances = look.events
      .map((event) => toResonance(event, look.view, soundings, null))
      .sort((a, b) => a.timeS - b.timeS);
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
    const heard = { series: this.#series, largest: this.#health.largest };
    return {
      ...report,
      warnings: [...this.#health.warnings(), ...listeningWarnings(report, fork, look, heard)],
    };
  }

  /** Takes samples up to each fixed step and decides there, so that decisions don't depend on the blocks. */
  #feed(samples: Float32Array, isHeard = true): Step[] {
    const steps: Step[] = [];
    for (let taken = 0; taken < samples.length;) {
      const part = samples.subarray(taken, taken + STEP_FRAMES - (this.#frames % STEP_FRAMES));
      taken += part.length;
      if (isHeard) this.#health.push(part);
      this.#take(part);
      if (this.#frames % STEP_FRAMES === 0) steps.push(this.#advance());
    }
    return steps;
  }

  #take(samples: Float32Array): void {
    for (let taken = 0; taken < samples.length;) {
      const part = this.#broadband.take(samples.subarray(taken));
      taken += part;
      this.#frames += part;
      if (this.#frames % BROADBAND_FRAME === 0) this.#frameMeanSquares.push(this.#broadband.meanSquare);
    }
    this.#stream.push(samples);
  }

  /** Lost frames are counted as silence, so that time never drifts, and marked, so that nothing spans them. */
  #bridgeGap(startFrame: number): Step[] {
    const { sampleRateHz } = this.#options;
    const steps: Step[] = [];
    this.#series.markGap(this.#frames / sampleRateHz);
    this.#series.markGap(startFrame / sampleRateHz);
    this.#health.interrupt();
    for (let left = Math.max(0, startFrame - this.#frames); left > 0;) {
      const part = Math.min(left, sampleRateHz);
      steps.push(...this.#feed(new Float32Array(part), false));
      left -= part;
    }
    return steps;
  }

  #advance(): Step {
    const resonances = this.#live.advance().map(({ event, view, decidedIndex }) => {
      const flaggedAtS = (decidedIndex + LOOKAHEAD) / this.#series.rateHz + this.#stream.delayS;
      return toResonance(event, view, this.#soundings, flaggedAtS);
    });
    this.#resonances.push(...resonances);
    return {
      resonances,
      points: this.#newPoints(),
      soundings: this.#newSoundings(),
      warnings: this.#newWarnings(),
    };
  }

  #update(steps: readonly Step[]): ListeningUpdate {
    return {
      points: steps.flatMap((step) => step.points),
      resonances: steps.flatMap((step) => step.resonances),
      soundings: steps.flatMap((step) => step.soundings),
      warnings: steps.flatMap((step) => step.warnings),
      guidance: this.#guidance(),
    };
  }

  #newPoints(): LevelPoint[] {
    const points: LevelPoint[] = [];
    const { rateHz, bandwidthHz } = this.#series;
    const ready = this.#series.length - LOOKAHEAD;
    for (; this.#nextPoint + POINT_HALF < ready; this.#nextPoint += POINT_STEP) {
      const k = this.#nextPoint;
      const view = viewOf(this.#series, k - POINT_HALF, k + POINT_HALF, this.#live.offsetHz ?? 0);
      const timeS = k / rateHz;
      let band = 0;
      for (let i = 0; i < view.length; i += 1) {
        band += ((view.re[i] as number) ** 2 + (view.im[i] as number) ** 2) / view.length;
      }
      for (; this.#flanksSeen < this.#series.flanks.length; this.#flanksSeen += 1) {
        const frame = this.#series.flanks[this.#flanksSeen];
        if (frame === undefined || frame.timeS > timeS) break;
        this.#room.push(frame, band, bandwidthHz, this.#toneHeard);
      }
      const bandHz = Math.min(bandwidthHz, rateHz / view.length);
      const roomPower = (this.#room.density ?? 0) * bandHz;
      const tonePower = smoothedPower(view, POINT_HALF, POINT_HALF);
      const localNoise = (view.noiseDensity[POINT_HALF] as number) * bandHz;
      this.#toneHeard = tonePower > HEARD * Math.max(roomPower, localNoise);
      const roomDb = levelDb(roomPower / 2 + 1e-20);
      const toneDb = this.#toneHeard ? levelDb(tonePower / 2) : null;
      points.push({
        timeS,
        toneDb,
        roomDb,
        broadbandDb: levelDb(this.#broadbandMeanSquare(timeS) + 1e-20),
        riseDb: toneDb === null ? null : toneDb - roomDb,
      });
    }
    return points;
  }

  /** Mean over the same 0.2 s as the tone's level. */
  #broadbandMeanSquare(timeS: number): number {
    const halfS = POINT_HALF / this.#series.rateHz;
    const from = Math.max(0, Math.floor((timeS - halfS) / this.#frameS));
    const frames = this.#frameMeanSquares.slice(from, Math.floor((timeS + halfS) / this.#frameS) + 1);
    return frames.reduce((sum, meanSquare) => sum + meanSquare, 0) / Math.max(1, frames.length);
  }

  #newSoundings(): Sounding[] {
    const ready = this.#series.length - LOOKAHEAD;
    if (ready < this.#nextSounding || this.#live.offsetHz === null) return [];
    while (this.#nextSounding <= ready) this.#nextSounding += SOUNDING_STEP;
    const { rateHz } = this.#series;
    const now = this.#nextSounding - SOUNDING_STEP;
    const open = this.#soundings[this.#soundings.length - 1];
    const since =
      open === undefined
        ? 0
        : Math.round((open.endS ?? open.startS) * rateHz) + (open.endS === null ? -50 : 1);
    const from = Math.max(0, since, now - Math.round(SOUNDING_PAST_S * rateHz));
    const spans = findSoundings(viewOf(this.#series, from, now, this.#live.offsetHz));
    const { fork } = this.#options;
    const changed: Sounding[] = [];
    let index = open === undefined ? 1 : open.endS === null ? open.index : open.index + 1;
    for (const span of spans) {
      const pitch = soundingPitch(this.#series, span, fork.toleranceHz, typicalNoise(this.#series, 150));
      const began = open !== undefined && index === open.index ? open.startS : span.from / rateHz;
      changed.push({
        index,
        startS: Math.min(began, span.from / rateHz),
        endS: span.ended ? span.to / rateHz : null,
        decayTimeS: decayTimeS(this.#series, span),
        frequencyHz: pitch === null ? null : fork.nominalHz + pitch.offsetHz,
        frequencyStandardUncertaintyHz: pitch?.standardUncertaintyHz ?? null,
      });
      index += 1;
    }
    for (const sounding of changed) this.#soundings[sounding.index - 1] = sounding;
    return changed;
  }

  #newWarnings(): ListeningWarning[] {
    const now = [...this.#health.warnings(), ...gapWarning(this.#series)];
    const fresh = now.filter(({ code }) => code !== 'silent' && !this.#told.has(code));
    for (const { code } of fresh) this.#told.add(code);
    return fresh;
  }

  /** How far the level now is under the best flagged one of this sounding, the fork's dying taken out. */
  #guidance(): Guidance | null {
    const sounding = this.#soundings[this.#soundings.length - 1];
    if (sounding === undefined || sounding.endS !== null || this.#live.offsetHz === null) return null;
    const own = this.#resonances.filter((r) => r.timeS >= sounding.startS);
    const { rateHz } = this.#series;
    const nowIndex = this.#series.length - LOOKAHEAD - POINT_HALF;
    const decayS = this.#lastDecayS() ?? Infinity;
    const powerAt = (timeS: number): number => {
      const k = Math.round(timeS * rateHz);
      const from = Math.max(0, k - POINT_HALF);
      const view = viewOf(
        this.#series,
        from,
        Math.min(this.#series.length, k + POINT_HALF),
        this.#live.offsetHz ?? 0,
      );
      return (
        Math.max(1e-20, smoothedPower(view, view.length >> 1, POINT_HALF)) * Math.exp((2 * timeS) / decayS)
      );
    };
    const strongest = Math.max(...own.map(({ timeS }) => powerAt(timeS)));
    // Of those within 4 dB of the strongest the latest: the less the fork has died since, the less is left to correct.
    const best = own.filter(({ timeS }) => powerAt(timeS) > 0.4 * strongest).at(-1);
    if (best === undefined) return null;
    const belowBestDb = levelDb(powerAt(nowIndex / rateHz)) - levelDb(powerAt(best.timeS));
    return { belowBestDb: Math.min(0, belowBestDb), bestTimeS: best.timeS };
  }

  #lastDecayS(): number | null {
    for (let i = this.#soundings.length - 1; i >= 0; i -= 1) {
      const decay = this.#soundings[i]?.decayTimeS;
      if (decay !== null && decay !== undefined) return decay;
    }
    return null;
  }
}
