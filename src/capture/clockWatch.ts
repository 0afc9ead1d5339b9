/** Sound may lag behind the clock by this much more than it ever did before it counts as lost, s. */
const LOST_S = 0.4;
/** The lag must stay for so many looks in a row: messages that are merely late catch up. */
const LATE_LOOKS = 4;
/** So many losses within this time mean another rate than the system says, or a machine that is too busy. */
const MOST_LOSSES = 4;
const LOSSES_WITHIN_S = 40;
/** Sound that runs ahead of the clock by this much can't be: the rate is another one. */
const AHEAD_S = 1;

/** What a look found: nothing, so many seconds of sound lost, or a rate that isn't the one announced. */
export type ClockFinding =
  | { readonly kind: 'even' }
  | { readonly kind: 'lost'; readonly lostS: number }
  | { readonly kind: 'wrong-rate' };

/**
 * Compares the sound that came in with the clock, in ways that late messages can't deceive: sleep, a starved audio
 * system and a device at another rate all lose time that nobody counts. Pure: both times are arguments.
 */
export class ClockWatch {
  private leastLagS: number | null = null;
  private firstLagS: number | null = null;
  private lateLooks = 0;
  private readonly lossesS: number[] = [];

  /**
   * @param nowS  a clock that never goes back, s
   * @param heardS  sound delivered since the start by its own count, s
   */
  look(nowS: number, heardS: number): ClockFinding {
    const lagS = nowS - heardS;
    this.firstLagS ??= lagS;
    this.leastLagS = Math.min(this.leastLagS ?? lagS, lagS);
    if (this.firstLagS - this.leastLagS > AHEAD_S) return { kind: 'wrong-rate' };
    const lateS = lagS - this.leastLagS;
    this.lateLooks = lateS > LOST_S ? this.lateLooks + 1 : 0;
    if (this.lateLooks < LATE_LOOKS) return { kind: 'even' };
    this.lossesS.push(nowS);
    if (this.lossesS.filter((s) => s > nowS - LOSSES_WITHIN_S).length >= MOST_LOSSES)
      return { kind: 'wrong-rate' };
    this.skip(lateS);
    return { kind: 'lost', lostS: lateS };
  }

  /** Notes lost time that is known already. @param seconds  >= 0 */
  skip(seconds: number): void {
    if (this.leastLagS !== null) this.leastLagS += seconds;
    if (this.firstLagS !== null) this.firstLagS += seconds;
    this.lateLooks = 0;
  }
}
