import type { Random } from '../detector/random.ts';

/** What the page shows at one moment. */
export interface Told {
  /** Flags so far. */
  readonly flags: number;
  /** It says "Here". */
  readonly isHere: boolean;
  /** The place that it shows, which may have been heard some time ago; null where it shows none. */
  readonly place: { readonly timeS: number; readonly distanceM: number | null } | null;
  /** Level against the best of this sounding, dB; null without one. */
  readonly belowBestDb: number | null;
}

/** What a hand does with what it was told, each time it looks. */
export interface Policy {
  look(told: Told, hand: MovingHand, nowS: number): void;
}

/** Of a hand that moves to a place it has read, m/s, and how fast it starts and stops, m/s². */
const FASTEST_MPS = 0.025;
const ACCELERATION_MPS2 = 0.2;
/** A move falls short or goes too far by this part of it. A judgement. */
const MOVE_SCATTER = 0.05;
/** What is shown is of this moment, s ago: ten places a second, and the tone stage's delay. */
const LAG_S = 0.15;

/** A column's length in a hand: it starts, goes and stops as mass does. */
export class MovingHand {
  positionM: number;
  private speedMps = 0;
  private limitMps = 0;
  private goalM: number;
  private readonly random: Random;

  constructor(random: Random, startM: number) {
    this.random = random;
    this.positionM = startM;
    this.goalM = startM;
  }

  get isMoving(): boolean {
    return this.speedMps !== 0 || this.positionM !== this.goalM;
  }

  /** At this speed until told otherwise. @param speedMps  > 0 makes the column longer; 0 stops */
  slide(speedMps: number): void {
    if (speedMps === 0)
      this.goalM = this.positionM + (this.speedMps * Math.abs(this.speedMps)) / (2 * ACCELERATION_MPS2);
    else this.goalM = this.positionM + Math.sign(speedMps) * 10;
    this.limitMps = Math.max(Math.abs(speedMps), 1e-3);
  }

  /** From where it rests by this much, at up to 25 mm/s. */
  moveBy(wantedM: number): void {
    this.goalM = this.positionM + wantedM * (1 + MOVE_SCATTER * this.random.gauss());
    this.limitMps = FASTEST_MPS;
  }

  step(stepS: number): void {
    const left = this.goalM - this.positionM;
    const wanted =
      Math.sign(left) * Math.min(this.limitMps, Math.sqrt(2 * ACCELERATION_MPS2 * Math.abs(left)));
    const change = ACCELERATION_MPS2 * stepS;
    this.speedMps += Math.max(-change, Math.min(change, wanted - this.speedMps));
    const isThere = Math.abs(left) < 2e-5 && Math.abs(this.speedMps) < 4e-3;
    this.positionM += this.speedMps * stepS;
    if (!isThere) return;
    this.positionM = this.goalM;
    this.speedMps = 0;
  }
}

/** Nothing told for so long: it slides on gently, m/s, to and fro about the place that it knows, m. */
const PATIENCE_S = 1.5;
const GENTLY_MPS = 0.012;
const REACH_M = 0.01;

/** Passes the resonance from both sides while nothing is told. */
class Groping {
  private sinceS: number | null = null;
  private middleM: number;
  private direction: number;

  /** @param middleM  where the resonance is thought to be */
  constructor(direction: number, middleM: number) {
    this.direction = direction;
    this.middleM = middleM;
  }

  /** @param resonanceM  where it must be by what is told */
  told(resonanceM: number): void {
    this.sinceS = null;
    this.middleM = resonanceM;
  }

  nothingTold(hand: MovingHand, nowS: number): void {
    if (this.sinceS === null) {
      this.sinceS = nowS;
      hand.slide(0);
    }
    if (nowS < this.sinceS + PATIENCE_S) return;
    const offM = hand.positionM - this.middleM;
    if (Math.abs(offM) > REACH_M) this.direction = -Math.sign(offM);
    hand.slide(this.direction * GENTLY_MPS);
  }
}

/** A hand that has seen the flag knows only that it has passed: so far back it looks, m. */
const PASSED_M = 0.012;

/**
 * Obeys the distance that is shown: moves by it, waits until the page shows a place that was heard since, looks again.
 * While it says "Here", the hand rests and the rule is read.
 */
export class DistancePolicy implements Policy {
  private readonly backward: number;
  private groping: Groping | null = null;
  private isGroping = true;
  private wasMoving = true;
  private restsSinceS = 0;

  /** @param backward  direction in which the resonance lies after the flag, ±1 */
  constructor(backward: number) {
    this.backward = backward;
  }

  look({ isHere, place }: Told, hand: MovingHand, nowS: number): void {
    this.groping ??= new Groping(this.backward, hand.positionM + this.backward * PASSED_M);
    const distanceM = isHere ? 0 : (place?.distanceM ?? null);
    if (distanceM === null) {
      this.isGroping = true;
      this.groping.nothingTold(hand, nowS);
      return;
    }
    if (this.isGroping) hand.slide(0);
    this.isGroping = false;
    if (hand.isMoving) {
      this.wasMoving = true;
      return;
    }
    if (this.wasMoving) this.restsSinceS = nowS;
    this.wasMoving = false;
    // What was heard before is of where it was.
    if (!isHere && place !== null && place.timeS < this.restsSinceS) return;
    this.groping.told(hand.positionM - distanceM);
    if (!isHere) hand.moveBy(-distanceM);
  }
}

/** Level way back: at first so fast, m/s, and half as fast after each turn, down to this. */
const RETURN_MPS = 0.015;
const SLOWEST_MPS = 0.003;
/** It turns where the level has fallen by this from its best, dB. */
const FALLEN_DB = 1;
/** Far below the maximum the level tells little: there it goes on for longer, but not farther than this. */
const NEAR_DB = -5;
const FALLEN_FAR_DB = 3;
const FARTHEST_M = 0.03;
/** After a turn it holds this near to the best that it has seen, which it forgets at a rate, dB and dB/s. */
const THERE_DB = 0.5;
const LEFT_DB = 1.5;
const FORGETS_DB_PER_S = 0.3;

/** Goes on while the level rises, turns when it has fallen, holds where it is as high as it ever was. */
export class LevelPolicy implements Policy {
  private readonly backward: number;
  private readonly delayS: number;
  private groping: Groping | null = null;
  private direction: number;
  private speedMps = RETURN_MPS;
  private legBestDb = -Infinity;
  private legFromM = 0;
  /** Before this what is told is still of the leg before. */
  private judgesFromS = 0;
  private topDb = -Infinity;
  private turns = 0;
  private isHolding = false;
  private lastS = 0;

  /** @param backward  direction in which the resonance lies after the flag, ±1 @param delayS  from page to hand */
  constructor(backward: number, delayS: number) {
    this.backward = backward;
    this.direction = backward;
    this.delayS = delayS;
  }

  look({ belowBestDb }: Told, hand: MovingHand, nowS: number): void {
    if (this.groping === null) {
      this.groping = new Groping(this.backward, hand.positionM + this.backward * PASSED_M);
      this.beginLeg(hand, nowS);
      this.lastS = nowS;
    }
    this.topDb -= FORGETS_DB_PER_S * (nowS - this.lastS);
    this.lastS = nowS;
    if (belowBestDb === null) {
      this.beginLeg(hand, nowS);
      this.topDb = -Infinity;
      this.groping.nothingTold(hand, nowS);
      return;
    }
    this.groping.told(hand.positionM);
    this.topDb = Math.max(this.topDb, belowBestDb);
    const under = this.topDb - belowBestDb;
    const wasHolding = this.isHolding;
    this.isHolding = this.turns > 0 && under <= (this.isHolding ? LEFT_DB : THERE_DB);
    if (this.isHolding) {
      this.beginLeg(hand, nowS);
      hand.slide(0);
      return;
    }
    // What it held was past the best: the message came late.
    if (wasHolding) this.turn(hand, nowS);
    hand.slide(this.direction * this.speedMps);
    if (nowS < this.judgesFromS) return;
    this.legBestDb = Math.max(this.legBestDb, belowBestDb);
    const isFar = Math.abs(hand.positionM - this.legFromM) > FARTHEST_M;
    const fallenDb = this.legBestDb - belowBestDb;
    const isPast = fallenDb > FALLEN_DB && this.legBestDb > NEAR_DB;
    if (isPast || fallenDb > FALLEN_FAR_DB || isFar) this.turn(hand, nowS);
  }

  private turn(hand: MovingHand, nowS: number): void {
    this.direction = -this.direction;
    this.speedMps = Math.max(SLOWEST_MPS, this.speedMps / 2);
    this.turns += 1;
    this.beginLeg(hand, nowS);
  }

  private beginLeg(hand: MovingHand, nowS: number): void {
    this.legBestDb = -Infinity;
    this.legFromM = hand.positionM;
    this.judgesFromS = nowS + this.delayS + LAG_S;
  }
}
