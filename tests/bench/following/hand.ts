import type { Random } from '../detector/random.ts';
import type { HandMakeup } from './scene.ts';

/** Steps a second at which hands are worked out. */
export const HAND_RATE_HZ = 1000;

/** Length against time, HAND_RATE_HZ values a second: a hand that passes a resonance and then wanders about it. */
export class HandPath {
  private readonly movedM: number[] = [];
  private readonly random: Random;
  /** Tremor: two one-poles of 4 Hz, m. */
  private tremor = 0;
  private tremor1 = 0;
  private atM: number;

  constructor(random: Random, startM: number) {
    this.random = random;
    this.atM = startM;
  }

  get timeS(): number {
    return this.movedM.length / HAND_RATE_HZ;
  }

  get positionM(): number {
    return this.atM;
  }

  get lengthsM(): readonly number[] {
    return this.movedM;
  }

  hold(seconds: number): void {
    for (let i = 0; i < seconds * HAND_RATE_HZ; i += 1) this.put(this.atM, 0.2);
  }

  /** To a place, its acceleration without jumps (minimum jerk; Flash and Hogan 1985, J. Neurosci. 5, 1688). */
  moveTo(targetM: number, seconds: number): void {
    const startM = this.atM;
    const count = Math.max(1, Math.round(seconds * HAND_RATE_HZ));
    for (let i = 1; i <= count; i += 1) {
      const s = i / count;
      this.put(startM + (targetM - startM) * s ** 3 * (10 - 15 * s + 6 * s * s), 1);
    }
  }

  /** At a speed that wavers, to a place. */
  slideTo(targetM: number, speedMps: number): void {
    const direction = Math.sign(targetM - this.atM);
    let waver = 0.3 * this.random.gauss();
    let start = 0;
    const keep = Math.exp(-1 / (0.4 * HAND_RATE_HZ));
    while ((targetM - this.atM) * direction > 0) {
      waver = keep * waver + 0.25 * Math.sqrt(1 - keep * keep) * this.random.gauss();
      start = Math.min(1, start + 1 / (0.2 * HAND_RATE_HZ));
      const speed = speedMps * start * Math.max(0.3, 1 + waver);
      this.put(this.atM + (direction * speed) / HAND_RATE_HZ, 1);
    }
  }

  /** Two sines about a place, begun where the hand is. */
  swing(middleM: number, reachM: number, seconds: number): void {
    const periodS = this.random.uniform(2, 5);
    const second = this.random.uniform(0.2, 0.5);
    const secondS = periodS * this.random.uniform(0.35, 0.6);
    const from = this.atM;
    const phases = [this.random.uniform(0, 2 * Math.PI), this.random.uniform(0, 2 * Math.PI)] as const;
    for (let i = 0; i < seconds * HAND_RATE_HZ; i += 1) {
      const t = i / HAND_RATE_HZ;
      const wave =
        Math.sin((2 * Math.PI * t) / periodS + phases[0]) +
        second * Math.sin((2 * Math.PI * t) / secondS + phases[1]);
      const blend = Math.min(1, t / 0.8) ** 2 * (3 - 2 * Math.min(1, t / 0.8));
      this.put(from + (middleM + reachM * wave - from) * blend, 1);
    }
  }

  /** A velocity that wanders, drawn back to a place. */
  walk(middleM: number, reachM: number, seconds: number): void {
    let speed = 0;
    const memoryS = this.random.uniform(0.3, 0.8);
    const pull = this.random.uniform(1.5, 4);
    const size = reachM * Math.sqrt(pull / memoryS) * 1.1;
    for (let i = 0; i < seconds * HAND_RATE_HZ; i += 1) {
      const dt = 1 / HAND_RATE_HZ;
      const off = this.atM - middleM;
      speed +=
        (-speed / memoryS - pull * off) * dt +
        size * Math.sqrt((2 * dt) / memoryS) * 0.7 * this.random.gauss();
      this.put(this.atM + speed * dt, 1);
    }
  }

  /** @param unrest  how much of the tremor shows */
  private put(positionM: number, unrest: number): void {
    this.atM = positionM;
    const step = 1 - Math.exp((-2 * Math.PI * 4) / HAND_RATE_HZ);
    this.tremor1 += step * (this.random.gauss() - this.tremor1);
    this.tremor += step * (this.tremor1 - this.tremor);
    // Two such low-passes leave the square root of half of a step's share: 50 µm in all.
    this.movedM.push(positionM + (unrest * 5e-5 * this.tremor) / Math.sqrt(step / 4));
  }
}

/** ln of the factor that an unsteady hand puts on a tone, HAND_RATE_HZ values a second. */
export interface Unsteadiness {
  readonly levelNp: Float64Array;
  readonly phaseRad: Float64Array;
}

const NP_PER_DB = Math.LN10 / 20;

/** What forgets itself (AR(1)) and a slow drift, level and phase apart. */
export function unsteadiness(random: Random, makeup: HandMakeup, count: number): Unsteadiness {
  const wander = (rms: number, drift: number): Float64Array => {
    const values = new Float64Array(count);
    const keep = Math.exp(-1 / (makeup.memoryS * HAND_RATE_HZ));
    let fast = rms * random.gauss();
    let slow = 0;
    // A few milliseconds of smoothness: a hand has mass.
    let smooth = fast;
    for (let i = 0; i < count; i += 1) {
      fast = keep * fast + rms * Math.sqrt(1 - keep * keep) * random.gauss();
      slow += (drift / Math.sqrt(10 * HAND_RATE_HZ)) * random.gauss();
      smooth += (fast - smooth) / (0.03 * HAND_RATE_HZ);
      values[i] = smooth + slow;
    }
    return values;
  };
  return {
    levelNp: wander(makeup.levelDb * NP_PER_DB, makeup.driftDb * NP_PER_DB),
    phaseRad: wander(makeup.phaseRad, makeup.driftRad),
  };
}
