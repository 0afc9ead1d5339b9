import type { SeededRandom } from './seededRandom.ts';
import { SlowDrift } from './slowDrift.ts';

/** How long a hand takes to bring the fork to the mouth, s. A judgement. */
const APPROACH_S = 0.25;
/** What is left of the fork's sound at the microphone when it is held away from the tube. */
const AWAY_SHARE = 0.7;
/** A finger stops the fork within some hundredths of a second. */
const DAMP_TIME_S = 0.02;
/** A quadrupole has four silent directions; in a room some sound comes from elsewhere. */
const QUADRUPOLE_FLOOR = 0.05;

/** A struck fork in a hand: how strongly it sounds and how it drives the column, as phasors at its own pitch. */
export class PracticeFork {
  /** Time in which the amplitude falls to 1/e, s. */
  decayTimeS = 12;
  /** Turned about its stem, rad; 0 points a flat side of a tine at the mouth. */
  turnRad = 0;
  private amplitude = 0;
  private damping = false;
  private nearness = 1;
  private near = true;
  private readonly level: SlowDrift;
  private readonly phase: SlowDrift;

  constructor(private readonly random: SeededRandom) {
    // A hand wavers by some tenths of a decibel, about once a second. A judgement.
    this.level = new SlowDrift(random, 0.04, 0.6);
    this.phase = new SlowDrift(random, 0.04, 0.6);
  }

  get isSounding(): boolean {
    return this.amplitude > 1e-4;
  }

  get isAtMouth(): boolean {
    return this.near;
  }

  /** 1 is a usual stroke; each differs by about 1 dB. */
  strike(strength: number): void {
    this.amplitude = strength * 10 ** ((1.2 * this.random.normal()) / 20);
    this.damping = false;
  }

  damp(): void {
    this.damping = true;
  }

  hold(atMouth: boolean): void {
    this.near = atMouth;
  }

  step(stepS: number): void {
    this.amplitude *= Math.exp(-stepS / (this.damping ? DAMP_TIME_S : this.decayTimeS));
    if (this.amplitude < 1e-6) this.amplitude = 0;
    const way = stepS / APPROACH_S;
    this.nearness = Math.max(0, Math.min(1, this.nearness + (this.near ? way : -way)));
    this.level.step(stepS);
    this.phase.step(stepS);
  }

  /** Phase that the wavering hand adds, rad. */
  get phaseRad(): number {
    return this.phase.value;
  }

  /** Sound straight from the fork to the microphone, 1 for a fresh usual stroke at the mouth. */
  get direct(): number {
    return this.shaped * (AWAY_SHARE + (1 - AWAY_SHARE) * this.approach);
  }

  /** Push of the fork on the air in the mouth, on the same scale; none when it is away. */
  get drive(): number {
    return this.shaped * this.approach ** 2;
  }

  private get shaped(): number {
    const quadrupole = Math.cos(2 * this.turnRad);
    const facing = Math.sign(quadrupole || 1) * Math.max(QUADRUPOLE_FLOOR, Math.abs(quadrupole));
    return this.amplitude * facing * (1 + this.level.value);
  }

  /** Starts and ends gently, as a hand does. */
  private get approach(): number {
    return this.nearness * this.nearness * (3 - 2 * this.nearness);
  }
}
