import { Rotator } from './rotator.ts';
import type { SeededRandom } from './seededRandom.ts';

/** Another group's fork across the room: struck now and then, and now and then its own column answers. */
export class OtherFork {
  private readonly carrier: Rotator;
  private amplitude = 0;
  private level = 0;
  private decayTimeS = 8;
  private waitS: number;
  private ageS = 0;
  private swellAtS = Infinity;

  /**
   * @param frequencyHz  of this fork
   * @param strength  amplitude of a fresh stroke
   */
  constructor(
    private readonly random: SeededRandom,
    sampleRateHz: number,
    frequencyHz: number,
    private readonly strength: number,
  ) {
    this.carrier = new Rotator(frequencyHz, sampleRateHz);
    this.waitS = random.between(0, 12);
  }

  step(stepS: number): void {
    this.ageS += stepS;
    this.waitS -= stepS;
    if (this.waitS <= 0) {
      this.waitS = this.random.between(10, 25);
      this.ageS = 0;
      this.decayTimeS = this.random.between(4, 12);
      this.amplitude = this.strength * 10 ** (this.random.between(-8, 3) / 20);
      this.swellAtS = this.random.uniform() < 0.6 ? this.random.between(2, 7) : Infinity;
    }
    this.amplitude *= Math.exp(-stepS / this.decayTimeS);
    // A passage through their resonance: about 10 dB for about a second.
    const swell = this.swellAtS === Infinity ? 0 : 2.2 / (1 + ((this.ageS - this.swellAtS) / 0.4) ** 2);
    this.level += (1 - Math.exp(-stepS / 0.01)) * (this.amplitude * (1 + swell) - this.level);
  }

  next(): number {
    this.carrier.turn();
    return this.level * this.carrier.sin;
  }
}
