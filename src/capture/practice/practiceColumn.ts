import { requireInRange } from '../../numeric/requireInRange.ts';
import type { Complex } from '../../numeric/complex.ts';
import { ColumnModel } from './columnModel.ts';
import { ColumnRing } from './columnRing.ts';
import { FadingMode } from './fadingMode.ts';
import { farEndPhasor, mouthPhasor } from './microphonePhasor.ts';
import { PracticeFork } from './practiceFork.ts';
import { checkPractice, USUAL_PRACTICE } from './practiceSettings.ts';
import type { PracticeSettings } from './practiceSettings.ts';
import { Rotator } from './rotator.ts';
import { RoomScene } from './roomScene.ts';
import type { RoomNoise } from './roomScene.ts';
import { SeededRandom } from './seededRandom.ts';
import { Slide } from './slide.ts';

/** Steps a second in which hands and air move; sound is interpolated between them. */
const STEPS_PER_S = 1000;
/** Amplitude at the microphone of a freshly struck fork alone: 40 dB below full scale. A judgement. */
const FORK_AMPLITUDE = 0.01;
/** Second mode of a clamped-free beam, 6.2669 (computed; Acoustics Today, Summer 2020, gives 6.26). */
const CLANG_RATIO = 6.2669;
const CLANG_TIME_S = 0.12;
const NOTHING: Complex = { re: 0, im: 0 };

/**
 * A tuning fork over an air column in a room, as a microphone hears it: pure synthesis, repeatable by its seed,
 * without a clock or an audio system. Hands act between two calls of `render`, to within 1 ms of sound.
 */
export class PracticeColumn {
  private settings: PracticeSettings;
  private model: ColumnModel;
  private readonly random: SeededRandom;
  private readonly fork: PracticeFork;
  private readonly ring = new ColumnRing();
  private readonly slide: Slide;
  private scene: RoomScene;
  private clang: FadingMode | null = null;
  private readonly click: FadingMode;
  private forkHzDrawn: number;
  private carrier: Rotator;
  private envelope: Complex = NOTHING;
  private readonly pending: Float32Array;
  private pendingFrom: number;
  private framesRendered = 0;

  /**
   * @param settings  what differs from `USUAL_PRACTICE`
   * @param seed  any integer: the same seed and the same hands give the same sound
   * @param sampleRateHz  8000..192000, a multiple of 1000
   * @throws RangeError naming the argument, its range and the value
   */
  constructor(
    settings: Partial<PracticeSettings> = {},
    seed = 1,
    readonly sampleRateHz = 48_000,
  ) {
    requireInRange('sampleRateHz', sampleRateHz, 8000, 192_000);
    if (sampleRateHz % STEPS_PER_S !== 0) {
      throw new RangeError(`sampleRateHz must be a multiple of ${STEPS_PER_S}, got ${sampleRateHz}`);
    }
    this.settings = checkPractice({ ...USUAL_PRACTICE, ...settings });
    this.random = new SeededRandom(seed);
    this.forkHzDrawn = drawForkHz(this.random, this.settings.stampedHz);
    this.carrier = this.buildCarrier();
    this.fork = new PracticeFork(this.random);
    this.slide = new Slide(this.settings.lengthM);
    this.pending = new Float32Array(sampleRateHz / STEPS_PER_S);
    this.pendingFrom = this.pending.length;
    this.click = new FadingMode(1800, 0.003, sampleRateHz);
    this.model = this.buildModel();
    this.scene = this.buildScene();
    this.fork.decayTimeS = this.settings.decayTimeS;
  }

  // What is so.

  /** The apparatus as it is now; `lengthM` is that of the start. */
  get apparatus(): PracticeSettings {
    return this.settings;
  }

  /** Real pitch of the fork, Hz. */
  get forkHz(): number {
    return this.settings.forkHz ?? this.forkHzDrawn;
  }

  get lengthM(): number {
    return this.slide.lengthM;
  }

  /** Where the tube is sliding to; `lengthM` once it rests. */
  get goalM(): number {
    return this.slide.goalM;
  }

  get isSliding(): boolean {
    return this.slide.isMoving;
  }

  get forkIsSounding(): boolean {
    return this.fork.isSounding;
  }

  get forkIsAtMouth(): boolean {
    return this.fork.isAtMouth;
  }

  /** Seconds of sound rendered so far. */
  get timeS(): number {
    return this.framesRendered / this.sampleRateHz;
  }

  /** Speed in free air: what an experiment should find, m/s. */
  get freeSpeedMps(): number {
    return this.model.freeSpeedMps;
  }

  /** Lengths at which this column resonates with this fork, shortest first, m. */
  get resonantLengthsM(): readonly number[] {
    return this.model.resonantLengthsM(this.settings.longestM);
  }

  /** Half of the width at half power of a resonance, m. @param lengthM  where it is */
  halfWidthM(lengthM: number): number {
    return this.model.halfWidthM(lengthM);
  }

  /**
   * Sound at the microphone, once steady, over that of the fork alone: what the level and the phase do as the
   * length changes.
   * @param lengthM  within the tube
   */
  responseAt(lengthM: number): Complex {
    const z = this.model.impedance(lengthM);
    const square = z.re * z.re + z.im * z.im;
    return this.heard(1, { re: z.re / square, im: -z.im / square }, lengthM);
  }

  // What hands do.

  /** Strikes the fork. @param strength  0.1..3, 1 is usual */
  strike(strength = 1): void {
    requireInRange('strength', strength, 0.1, 3);
    this.fork.strike(strength);
    this.click.strike(0.05 * strength);
    const clangHz = CLANG_RATIO * this.forkHz;
    if (clangHz < 0.45 * this.sampleRateHz) {
      this.clang = new FadingMode(clangHz, CLANG_TIME_S, this.sampleRateHz);
      this.clang.strike(0.5 * FORK_AMPLITUDE * strength);
    }
  }

  /** Stops the fork with a finger. */
  damp(): void {
    this.fork.damp();
    this.clang = null;
  }

  /** Brings the fork to the mouth of the column or takes it away; takes a quarter of a second. */
  setForkAtMouth(atMouth: boolean): void {
    this.fork.hold(atMouth);
  }

  /** Turns the fork about its stem; at 45° it is all but silent. @param turnRad  any angle */
  setForkTurn(turnRad: number): void {
    this.fork.turnRad = turnRad;
  }

  /** Puts the column at this length at once. @param lengthM  within the tube */
  setLengthM(lengthM: number): void {
    this.checkLength(lengthM);
    this.slide.place(lengthM);
  }

  /** Slides smoothly to this length; a new goal takes over from where the tube is. @param lengthM  within the tube */
  slideTo(lengthM: number): void {
    this.checkLength(lengthM);
    this.slide.aimAt(lengthM);
  }

  /** Speed of the slide, m/s, 0.001..0.5; a careful hand moves at 0.01 to 0.08. */
  setSlideSpeed(speedMps: number): void {
    requireInRange('speedMps', speedMps, 0.001, 0.5);
    this.slide.speedMps = speedMps;
  }

  setNoise(noise: RoomNoise): void {
    if (noise !== this.settings.noise) this.change({ noise });
  }

  /**
   * Changes the apparatus: another fork, tube or air. A new fork is silent until it is struck.
   * @throws RangeError naming the argument, its range and the value; nothing is changed then
   */
  change(settings: Partial<PracticeSettings>): void {
    const before = this.settings;
    const next = { ...before, ...settings };
    const lengthM = Math.max(next.shortestM, Math.min(next.longestM, this.slide.lengthM));
    this.settings = checkPractice({ ...next, lengthM: settings.lengthM ?? lengthM });
    if (this.settings.lengthM !== this.slide.lengthM) this.slide.place(this.settings.lengthM);
    const forkIsNew = next.stampedHz !== before.stampedHz || next.forkHz !== before.forkHz;
    if (forkIsNew) {
      this.forkHzDrawn = drawForkHz(this.random, next.stampedHz);
      this.carrier = this.buildCarrier();
      this.damp();
    }
    this.fork.decayTimeS = next.decayTimeS;
    this.model = this.buildModel();
    if (next.noise !== before.noise || forkIsNew) this.scene = this.buildScene();
  }

  // The sound.

  /**
   * The next stretch of sound; how it is cut into calls changes nothing.
   * @param frames  >= 0
   * @returns Float32Array, mono, -1..1, not used again by later calls
   */
  render(frames: number): Float32Array<ArrayBuffer> {
    const samples = new Float32Array(frames);
    let at = 0;
    while (at < frames) {
      if (this.pendingFrom === this.pending.length) this.renderStep();
      const part = this.pending.subarray(this.pendingFrom, this.pendingFrom + frames - at);
      samples.set(part, at);
      at += part.length;
      this.pendingFrom += part.length;
    }
    this.framesRendered += frames;
    return samples;
  }

  private renderStep(): void {
    const stepS = 1 / STEPS_PER_S;
    this.slide.step(stepS);
    this.fork.step(stepS);
    this.scene.step(stepS);
    const { drive, phaseRad } = this.fork;
    const turned = { re: drive * Math.cos(phaseRad), im: drive * Math.sin(phaseRad) };
    this.ring.step(this.model, this.slide.lengthM, turned, stepS);
    const from = this.envelope;
    this.envelope = this.heard(this.fork.direct, this.ring.motion, this.slide.lengthM, phaseRad);

    const frames = this.pending.length;
    for (let i = 0; i < frames; i += 1) {
      const share = (i + 1) / frames;
      const re = from.re + share * (this.envelope.re - from.re);
      const im = from.im + share * (this.envelope.im - from.im);
      this.carrier.turn();
      const tone = FORK_AMPLITUDE * (re * this.carrier.cos - im * this.carrier.sin);
      const sample = tone + this.click.next() + (this.clang?.next() ?? 0) + this.scene.next();
      this.pending[i] = Math.max(-1, Math.min(1, sample));
    }
    this.pendingFrom = 0;
  }

  /** Phasor at the microphone: the fork's own sound and what the mouth (and a far open end) radiates. */
  private heard(direct: number, motion: Complex, lengthM: number, phaseRad = 0): Complex {
    const mouth = mouthPhasor(motion);
    const far = this.settings.ends === 'open' ? farEndPhasor(mouth, this.wayRad(lengthM)) : NOTHING;
    return {
      re: direct * Math.cos(phaseRad) + mouth.re + far.re,
      im: direct * Math.sin(phaseRad) + mouth.im + far.im,
    };
  }

  /** Phase that the wave gathers from the mouth to the far end. */
  private wayRad(lengthM: number): number {
    return (2 * Math.PI * this.forkHz * this.model.effectiveLengthM(lengthM)) / this.model.tubeSpeedMps;
  }

  private checkLength(lengthM: number): void {
    requireInRange('lengthM', lengthM, this.settings.shortestM, this.settings.longestM);
  }

  private buildCarrier(): Rotator {
    return new Rotator(this.forkHz, this.sampleRateHz, 2 * Math.PI * this.random.uniform());
  }

  private buildModel(): ColumnModel {
    const { diameterM, ends, air } = this.settings;
    return new ColumnModel({ frequencyHz: this.forkHz, radiusM: diameterM / 2, ends, air });
  }

  private buildScene(): RoomScene {
    return new RoomScene(this.random, this.sampleRateHz, this.settings.noise, this.settings.stampedHz);
  }
}

/** Forks are off their stamp by about 0.1 %, 0.5 % at most (maker's tolerance, from memory). */
function drawForkHz(random: SeededRandom, stampedHz: number): number {
  return stampedHz * (1 + Math.max(-0.005, Math.min(0.005, 0.0012 * random.normal())));
}
