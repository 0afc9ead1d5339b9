import { judgeGain } from './gainCheck.ts';
import type { GainAnswer } from './gainCheck.ts';
import type { LevelPoint } from './listeningTypes.ts';

/** Points between two looks: half a second. */
const LOOK_POINTS = 10;
/** Points kept: a minute. */
const KEPT_POINTS = 1200;
/** A verdict is given once the decay has been followed for this long, s. */
const ENOUGH_S = 8;

/** The gain check while it goes on: the column stays, the fork is struck once, somebody talks. */
export class GainCheckRun {
  /** The answer so far. */
  answer: GainAnswer = judgeGain([]);
  private points: LevelPoint[] = [];
  private sinceLook = 0;

  /** Hears points. @returns whether the answer was looked at anew */
  push(points: readonly LevelPoint[]): boolean {
    this.points.push(...points);
    if (this.points.length > KEPT_POINTS) this.points.splice(0, this.points.length - KEPT_POINTS);
    this.sinceLook += points.length;
    if (this.sinceLook < LOOK_POINTS) return false;
    this.sinceLook = 0;
    this.answer = judgeGain(this.points);
    return true;
  }

  /** Whether nothing more can change the answer. */
  get isOver(): boolean {
    return this.answer.missing === null && this.answer.followedS >= ENOUGH_S;
  }

  /** Forgets what was heard, as after lost sound. */
  restart(): void {
    this.points = [];
    this.sinceLook = 0;
    this.answer = judgeGain([]);
  }
}
