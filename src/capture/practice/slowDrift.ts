import type { SeededRandom } from './seededRandom.ts';

/** A quantity that wanders about zero: white noise through two one-pole low-passes, as smooth as a hand. */
export class SlowDrift {
  private first = 0;
  private second = 0;

  /**
   * @param random  where the steps come from
   * @param deviation  standard deviation of the value
   * @param timeConstantS  of each low-pass
   */
  constructor(
    private readonly random: SeededRandom,
    private readonly deviation: number,
    private readonly timeConstantS: number,
  ) {}

  get value(): number {
    return this.second;
  }

  step(stepS: number): void {
    const gain = 1 - Math.exp(-stepS / this.timeConstantS);
    // Two equal poles pass gain/4 of the variance of white noise, for a small gain.
    this.first += gain * ((this.random.normal() * this.deviation * 2) / Math.sqrt(gain) - this.first);
    this.second += gain * (this.first - this.second);
  }
}
