import { Rotator } from './rotator.ts';
import type { SeededRandom } from './seededRandom.ts';

/** Steady noise of a room with nobody in it: ventilation, which falls by about 5 dB an octave, and mains hum. */
export class RoomHum {
  private low = 0;
  private middle = 0;
  private readonly mains: Rotator;
  private readonly mainsOctave: Rotator;
  private readonly lowGain: number;
  private readonly middleGain: number;

  constructor(
    private readonly random: SeededRandom,
    sampleRateHz: number,
  ) {
    this.mains = new Rotator(50, sampleRateHz);
    this.mainsOctave = new Rotator(100, sampleRateHz, 1);
    this.lowGain = 1 - Math.exp((-2 * Math.PI * 120) / sampleRateHz);
    this.middleGain = 1 - Math.exp((-2 * Math.PI * 1500) / sampleRateHz);
  }

  /** Mean square about 1. */
  next(): number {
    // Filtered noise is all but normally distributed, whatever goes in; this has unit variance.
    const white = Math.sqrt(12) * (this.random.uniform() - 0.5);
    this.low += this.lowGain * (white - this.low);
    this.middle += this.middleGain * (white - this.middle);
    this.mains.turn();
    this.mainsOctave.turn();
    const hum = 0.25 * this.mains.sin + 0.12 * this.mainsOctave.sin;
    return 9 * this.low + 1.5 * this.middle + 0.1 * white + hum;
  }
}
