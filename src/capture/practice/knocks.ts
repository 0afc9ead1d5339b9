import { FadingMode } from './fadingMode.ts';
import type { SeededRandom } from './seededRandom.ts';

/** Knocks of tables, chairs and tubes: a few modes each, at random moments. */
export class Knocks {
  private modes: FadingMode[] = [];
  private waitS: number;

  /** @param meanWaitS  between knocks; Infinity for none */
  constructor(
    private readonly random: SeededRandom,
    private readonly sampleRateHz: number,
    private readonly meanWaitS: number,
  ) {
    this.waitS = this.drawWait();
  }

  step(stepS: number): void {
    this.waitS -= stepS;
    if (this.waitS > 0) return;
    this.waitS = this.drawWait();
    const level = 0.25 * 10 ** (this.random.between(-20, 0) / 20);
    const pitchHz = this.random.between(120, 500);
    this.modes = [1, 1.7, 2.6, 4.1].map((ratio) => {
      const mode = new FadingMode(
        pitchHz * ratio * this.random.between(0.95, 1.05),
        this.random.between(0.008, 0.05),
        this.sampleRateHz,
      );
      mode.strike((level / ratio) * this.random.between(0.5, 1));
      return mode;
    });
  }

  next(): number {
    let sum = 0;
    for (const mode of this.modes) if (!mode.isSilent) sum += mode.next();
    return sum;
  }

  /** Waiting times of events that know nothing of one another are exponential. */
  private drawWait(): number {
    return this.meanWaitS === Infinity ? Infinity : -this.meanWaitS * Math.log(1 - this.random.uniform());
  }
}
