import type { SeededRandom } from './seededRandom.ts';

/** Steady noise of a room with nobody in it: ventilation, which falls by about 5 dB an octave, and mains hum. */
export class RoomHum {
  private low = 0;
  private middle = 0;
  private phase = 0;
  private readonly lowGain: number;
  private readonly middleGain: number;

  constructor(
    private readonly random: SeededRandom,
    private readonly sampleRateHz: number,
  ) {
    this.lowGain = 1 - Math.exp((-2 * Math.PI * 120) / sampleRateHz);
    this.middleGain = 1 - Math.exp((-2 * Math.PI * 1500) / sampleRateHz);
  }

  /** Mean square about 1. */
  next(): number {
    const white = this.random.normal();
    this.low += this.lowGain * (white - this.low);
    this.middle += this.middleGain * (white - this.middle);
    this.phase += (2 * Math.PI * 50) / this.sampleRateHz;
    if (this.phase > 2 * Math.PI) this.phase -= 2 * Math.PI;
    const hum = 0.25 * Math.sin(this.phase) + 0.12 * Math.sin(2 * this.phase + 1);
    return 9 * this.low + 1.5 * this.middle + 0.1 * white + hum;
  }
}
