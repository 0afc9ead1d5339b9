import { ColumnAtPitch, type Tube } from './column.ts';
import type { ForkTruth, Performance, Strike } from './performance.ts';
import { slowNoise, type Random } from './random.ts';
import { Timeline } from './timeline.ts';
import type { Condition } from './scenario.ts';

const USUAL_FORKS_HZ = [256, 288, 320, 341.3, 384, 426.6, 480, 512];
/** At the ends of a school's set and beyond, as far as the page takes them. */
export const LOWEST_FORKS_HZ = [64, 80, 96, 100, 128];
export const HIGHEST_FORKS_HZ = [2048, 2560, 3072, 4096];
const SHORTEST_M = 0.03;
const LONGEST_M = 1.2;
/** A low fork's tube is so many wavelengths long, as far as a room holds it: it has a second resonance. */
const LONGEST_WAVELENGTHS = 0.9;
const LONGEST_IN_ROOM_M = 5;
const LOW_HZ = 128;
/** Of sound, for the length of a tube: nothing else depends on it. */
const ABOUT_MPS = 343;
/** A fork above this is held to a narrower tube: a wide one radiates all that it has. */
const USUAL_TUBE_HZ = 2048;

const isOuter = (condition: Condition): boolean =>
  condition === 'lowest-forks' || condition === 'highest-forks';

const longestM = ({ nominalHz }: ForkTruth): number =>
  nominalHz < LOW_HZ ? Math.min(LONGEST_IN_ROOM_M, (LONGEST_WAVELENGTHS * ABOUT_MPS) / nominalHz) : LONGEST_M;

/** A fork of the physics set, its real pitch a little off the stamp. */
export function drawFork(random: Random, nominalHz?: number): ForkTruth {
  const draw = random.next();
  const usual = random.pick(USUAL_FORKS_HZ);
  const nominal = nominalHz ?? (draw < 0.04 ? 128 : draw < 0.08 ? 2048 : draw < 0.2 ? 1024 : usual);
  const off = Math.max(-1, Math.min(1, 0.3 * random.gauss()));
  return { nominalHz: nominal, actualHz: nominal + off, decayTimeS: 5 * 8 ** random.next() };
}

/** A tube on the bench in which the fork has at least one resonance. @param nominalHz  of the fork */
export function drawTube(random: Random, closed: boolean, nominalHz = USUAL_TUBE_HZ): Tube {
  return {
    radiusM: random.uniform(0.01, 0.025) * Math.min(1, USUAL_TUBE_HZ / nominalHz),
    closed,
    lossFactor: random.uniform(1, 1.8),
    endFactor: random.uniform(0.95, 1.1),
    temperatureC: random.uniform(15, 28),
  };
}

/**
 * What two hands do with fork and tube in one recording.
 * @param rateHz  rate of the lengths in the result
 */
export function planPerformance(
  random: Random,
  condition: Condition,
  fork: ForkTruth,
  durationS: number,
  rateHz: number,
  still: boolean,
): Performance {
  const closed = condition !== 'open-column' && (fork.nominalHz < 200 || random.chance(0.85));
  const tube = drawTube(random, closed, fork.nominalHz);
  const column = new ColumnAtPitch(tube, fork.actualHz);
  const orders = [1, 2, 3, 4, 5, 6, 7].filter((order) => {
    const length = column.resonantLengthM(order);
    return length > SHORTEST_M + 0.015 && length < longestM(fork) - 0.03;
  });
  const hand = new Hand(random.branch('hand'), condition, column, orders, fork, durationS);
  const { lengthM, strikes, turning } = hand.act(rateHz);
  const drawn = random.branch('levels');
  const performance: Performance = {
    fork,
    tube: condition === 'no-column' ? null : tube,
    lengthM,
    strikes,
    amplitude: 10 ** (drawn.uniform(-50, -28) / 20),
    riseDb: drawn.uniform(6, 20),
    riseOrder: orders[0] ?? 1,
    mouthPhaseRad: drawn.uniform(-Math.PI, Math.PI),
    awayDb: drawn.uniform(-3, 3),
    wobbleDb: still ? 0 : drawn.uniform(0.5, 3),
    wobbleHz: drawn.uniform(0.5, 6),
    phaseRms: still ? 0 : drawn.uniform(0.1, 0.3),
    phaseCornerHz: drawn.uniform(0.5, 3),
    turnRad: turning,
    clickLevel: drawn.uniform(2, 8),
    clangLevel: drawn.uniform(0.2, 1.5),
    clangDecayS: drawn.uniform(0.08, 0.3),
  };
  if (isOuter(condition)) return { ...performance, riseDb: drawn.uniform(4, 18) };
  if (condition !== 'clamped-fork') return performance;
  // A stand doesn't tremble.
  return {
    ...performance,
    riseDb: drawn.uniform(3, 16),
    wobbleDb: drawn.uniform(0, 0.3),
    phaseRms: drawn.uniform(0, 0.03),
  };
}

/** The person at the tube. Steps through the recording from its beginning to its end. */
class Hand {
  private readonly line: Timeline;
  private readonly strikes: Strike[] = [];
  private readonly turns: { fromS: number; toS: number; radPerS: number }[] = [];
  private readonly speedMps: number;
  /** Whether each strike is for one pass, and the fork is damped right after it. */
  private readonly passesOnce: boolean;
  private direction: 1 | -1;

  constructor(
    private readonly random: Random,
    private readonly condition: Condition,
    private readonly column: ColumnAtPitch,
    private readonly orders: readonly number[],
    private readonly fork: ForkTruth,
    private readonly durationS: number,
  ) {
    // Where the resonances are wide and far from each other, a hand goes faster.
    const pace = isOuter(condition) ? Math.max(0.4, Math.min(2.5, 340 / fork.nominalHz)) : 1;
    this.speedMps =
      condition === 'fast-slide'
        ? random.uniform(0.05, 0.085)
        : condition === 'slow-slide'
          ? random.uniform(0.004, 0.01)
          : pace * 0.01 * 5 ** random.next();
    const mayPassOnce = isOuter(condition) || condition === 'clamped-fork';
    this.passesOnce = condition === 'single-pass' || (mayPassOnce && random.branch('pass once').chance(0.5));
    this.direction = random.sign();
    this.line = new Timeline(random.branch('slide'), this.startLengthM(), durationS);
  }

  act(rateHz: number): { lengthM: Float64Array; strikes: Strike[]; turning: Float64Array | null } {
    this.line.hold(this.random.uniform(0.8, 2));
    while (this.line.timeS < this.durationS - 5) this.oneSounding();
    const lengthM = this.line.resampled(rateHz);
    return { lengthM, strikes: this.strikes, turning: this.turning(lengthM.length, rateHz) };
  }

  private get now(): number {
    return this.line.timeS;
  }

  private oneSounding(): void {
    const { random, line, condition } = this;
    const strikeS = this.now;
    const strength = 10 ** (random.uniform(-4, 3) / 20);
    line.hold(random.uniform(0.2, 0.8));
    if (condition === 'strike-only') {
      line.hold(random.uniform(1, 5));
      const dampedS = random.chance(0.7) ? this.now : null;
      line.hold(random.uniform(0.3, 2));
      this.strikes.push({ strikeS, strength, visits: [], dampedS });
      return;
    }
    if (condition.startsWith('check-') || condition === 'approach-on-resonance') {
      this.comeAndGo(strikeS, strength);
      return;
    }
    const fromS = this.now;
    const approachS = random.uniform(0.2, 1);
    line.hold(approachS * (random.chance(0.8) ? 1 : 0.5));
    const byS = fromS + approachS;
    if (random.chance(0.8)) line.hold(random.uniform(0.1, 0.7));
    const useful = Math.min(random.uniform(7, 20), 1.6 * this.fork.decayTimeS);
    const untilS = Math.min(this.now + useful, this.durationS - 1.2);
    if (condition === 'approach-off-resonance') this.hover(untilS);
    else if (condition === 'no-resonance') this.wander(untilS);
    else if (this.passesOnce) this.passOnce(untilS);
    else this.search(untilS);
    if (random.chance(0.6)) line.hold(random.uniform(0.1, 0.5));
    const ending = random.next() * (this.passesOnce ? 0.8 : 1);
    let leaveS: number | null = null;
    let goneS: number | null = null;
    let dampedS: number | null = null;
    if (ending < 0.5) {
      leaveS = this.now;
      goneS = leaveS + random.uniform(0.2, 0.7);
      line.hold(goneS - leaveS + random.uniform(0, 0.5));
      if (random.chance(0.6)) dampedS = this.now;
    } else if (ending < 0.8) dampedS = this.now;
    this.strikes.push({ strikeS, strength, visits: [{ fromS, byS, leaveS, goneS }], dampedS });
    line.hold(random.uniform(0.4, 1.5));
    // The next sounding starts off resonance, as a rule.
    if (this.passesOnce) this.goBeside();
    else if (condition !== 'no-resonance' && condition !== 'approach-off-resonance') this.stepAside();
  }

  /** The fork goes away from the mouth and comes back, the column stays. */
  private comeAndGo(strikeS: number, strength: number): void {
    const { random, line } = this;
    const visits: Strike['visits'][number][] = [];
    const count = random.integer(
      this.condition.startsWith('check-') ? 4 : 1,
      this.condition.startsWith('check-') ? 7 : 3,
    );
    const pace = random.uniform(0.8, 1.6);
    for (let i = 0; i < count && this.now < this.durationS - 3; i += 1) {
      const fromS = this.now;
      line.hold(random.uniform(0.2, 0.5));
      const byS = this.now;
      line.hold(pace * random.uniform(0.7, 1.6));
      const leaveS = this.now;
      line.hold(random.uniform(0.2, 0.5));
      const goneS = this.now;
      line.hold(pace * random.uniform(0.7, 1.6));
      visits.push({ fromS, byS, leaveS, goneS });
    }
    const dampedS = random.chance(0.5) ? this.now : null;
    line.hold(random.uniform(0.5, 1.5));
    this.strikes.push({ strikeS, strength, visits, dampedS });
    // One sounding is all that a check needs.
    if (this.condition.startsWith('check-')) line.hold(this.durationS - this.now);
  }

  /** Sliding through resonances, with turns, pauses and going back. */
  private search(untilS: number): void {
    const { random, line } = this;
    const often = this.condition === 'pause-and-return';
    while (this.now < untilS) {
      const order = this.nextOrder();
      if (order === null) {
        this.direction = this.direction === 1 ? -1 : 1;
        if (this.nextOrder() === null) return;
        continue;
      }
      const centre = this.column.resonantLengthM(order);
      const half = this.column.halfWidthM(order);
      const speed = this.speedMps * random.uniform(0.8, 1.25);
      // Far away a hand is quicker.
      const near = centre - this.direction * Math.max(0.05, 8 * half);
      if ((near - line.lengthM) * this.direction > 0.03) line.slideTo(near, Math.max(speed, 0.05), untilS);
      if (often && random.chance(0.7)) {
        line.slideTo(centre + this.direction * half * random.uniform(3, 8), speed, untilS);
        line.hold(Math.min(random.uniform(0.2, 0.8), untilS - this.now));
        line.slideTo(centre + half * random.uniform(-0.4, 0.4), 0.6 * speed, untilS);
        line.hold(Math.min(random.uniform(0.5, 2.5), Math.max(0, untilS - this.now)));
        if (random.chance(0.5)) this.direction = this.direction === 1 ? -1 : 1;
      } else if (often || random.chance(0.1)) {
        line.slideTo(centre + half * random.uniform(-0.4, 0.4), speed, untilS);
        line.hold(Math.min(random.uniform(0.3, 1.5), Math.max(0, untilS - this.now)));
      }
      // A quick hand overshoots further.
      const beyond = Math.max(random.uniform(0.02, 0.05), 4 * half) + speed * random.uniform(0.1, 0.9);
      const target = centre + this.direction * beyond;
      line.slideTo(this.onTheBench(target), speed, untilS);
      if (random.chance(0.25)) line.hold(Math.min(random.uniform(0.2, 1.2), Math.max(0, untilS - this.now)));
      if (random.chance(0.45)) this.direction = this.direction === 1 ? -1 : 1;
    }
  }

  /** From one side of the nearest resonance to the other, as far as the hand likes. */
  private passOnce(untilS: number): void {
    const { random, line, column } = this;
    const order = column.nearestOrder(line.lengthM);
    const centre = column.resonantLengthM(order);
    const beyond = (centre - line.lengthM) * random.uniform(0.7, 1.4);
    line.slideTo(this.onTheBench(centre + beyond), this.speedMps, untilS);
    line.hold(random.uniform(0.1, 1));
  }

  /** Without a sound: beside any of the first resonances. */
  private goBeside(): void {
    const { random, line, column } = this;
    const order = this.orders.length === 0 ? 1 : random.pick(this.orders.slice(0, 3));
    const away = Math.max(0.012, column.halfWidthM(order) * 1.2 * 5 ** random.next());
    line.slideTo(this.onTheBench(column.resonantLengthM(order) + random.sign() * away), 0.15);
    line.hold(random.uniform(0, 0.5));
  }

  private onTheBench(lengthM: number): number {
    return Math.max(SHORTEST_M, Math.min(longestM(this.fork), lengthM));
  }

  /** The order that comes next in the direction of sliding; null where there is none. */
  private nextOrder(): number | null {
    const ahead = this.orders.filter(
      (order) => (this.column.resonantLengthM(order) - this.line.lengthM) * this.direction > 0.002,
    );
    const next = this.direction === 1 ? ahead[0] : ahead.at(-1);
    return next ?? null;
  }

  /** Sliding about where nothing resonates. */
  private wander(untilS: number): void {
    const [low, high] = this.deadRange();
    while (this.now < untilS) {
      this.line.slideTo(this.random.uniform(low, high), this.speedMps, untilS);
      this.line.hold(Math.min(this.random.uniform(0, 0.8), Math.max(0, untilS - this.now)));
    }
  }

  /** The column stays; nothing happens but the fork's coming and going. */
  private hover(untilS: number): void {
    this.line.hold(Math.min(this.random.uniform(1, 6), Math.max(0.3, untilS - this.now)));
  }

  /** Lengths well away from every resonance. */
  private deadRange(): [number, number] {
    const order = this.orders[0] ?? 1;
    const spacing = this.column.waveSpeedMps / (2 * this.column.frequencyHz);
    const margin = Math.min(0.25 * spacing, Math.max(0.02, 6 * this.column.halfWidthM(order)));
    const low = this.column.resonantLengthM(order) + margin;
    return [low, Math.min(longestM(this.fork), low + spacing - 2 * margin)];
  }

  private stepAside(): void {
    const order = this.column.nearestOrder(this.line.lengthM);
    const centre = this.column.resonantLengthM(order);
    const gap = this.line.lengthM - centre;
    const wanted = Math.max(0.012, 3.5 * this.column.halfWidthM(order));
    if (Math.abs(gap) > wanted) return;
    this.line.slideTo(Math.max(SHORTEST_M, centre + (gap < 0 ? -1 : 1) * (wanted + 0.005)), 0.06);
  }

  private startLengthM(): number {
    const { random, column } = this;
    // A check is made at the clearest resonance.
    const low = this.orders.slice(0, this.condition.startsWith('check-') ? 1 : 2);
    const order = low.length === 0 ? 1 : random.pick(low);
    const centre = column.resonantLengthM(order);
    const half = column.halfWidthM(order);
    switch (this.condition) {
      case 'check-resonant':
        return centre + half * random.uniform(-0.25, 0.25);
      case 'approach-on-resonance':
        return centre + half * random.uniform(-1.2, 1.2);
      case 'check-off': {
        const spacing = column.waveSpeedMps / (2 * column.frequencyHz);
        const off = random.uniform(Math.min(3 * half, 0.4 * spacing), Math.min(0.45 * spacing, 12 * half));
        return Math.max(SHORTEST_M, centre + random.sign() * off);
      }
      case 'no-resonance':
      case 'approach-off-resonance': {
        const [from, to] = this.deadRange();
        return random.uniform(from, to);
      }
      default: {
        const away = this.speedMps < 0.012 ? random.uniform(0.012, 0.03) : random.uniform(0.02, 0.08);
        const gap = Math.max(away, 4 * half);
        const start = centre - this.direction * gap;
        if (start >= SHORTEST_M) return start;
        this.direction = -1;
        return centre + gap;
      }
    }
  }

  /** Angle of the fork about its stem: at rest it faces the mouth; some stretches of turning. */
  private turning(length: number, rateHz: number): Float64Array | null {
    if (this.condition !== 'turning') return null;
    const { random } = this;
    let from = random.uniform(2, 4);
    while (from < this.durationS) {
      const to = from + random.uniform(2, 5);
      this.turns.push({
        fromS: from,
        toS: to,
        radPerS: random.sign() * 2 * Math.PI * random.uniform(0.1, 0.5),
      });
      from = to + random.uniform(3, 7);
    }
    const uneven = slowNoise(random, length, rateHz, 1, 0.4);
    const angle = new Float64Array(length);
    let value = 0;
    let speed = 0;
    for (let i = 0; i < length; i += 1) {
      const time = i / rateHz;
      const turn = this.turns.find((stretch) => time >= stretch.fromS && time < stretch.toS);
      // After a stretch the hand brings the fork back to its best side, a multiple of a quarter turn.
      const home = Math.round(value / (Math.PI / 2)) * (Math.PI / 2);
      const wanted = turn === undefined ? (home - value) * 4 : turn.radPerS * Math.exp(uneven[i]);
      speed += (wanted - speed) / (0.1 * rateHz);
      value += speed / rateHz;
      angle[i] = value;
    }
    return angle;
  }
}
