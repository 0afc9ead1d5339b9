/** A resonance of the vocal tract, of unit gain at 0 Hz; its frequency may glide. */
export class Formant {
  private a1 = 0;
  private a2 = 0;
  private gain = 1;
  private last = 0;
  private beforeLast = 0;

  constructor(private readonly sampleRateHz: number) {}

  /** @see Klatt 1980, J. Acoust. Soc. Am. 67, 971, eq. 2 */
  tune(frequencyHz: number, bandwidthHz: number): void {
    const radius = Math.exp((-Math.PI * bandwidthHz) / this.sampleRateHz);
    this.a2 = -radius * radius;
    this.a1 = 2 * radius * Math.cos((2 * Math.PI * frequencyHz) / this.sampleRateHz);
    this.gain = 1 - this.a1 - this.a2;
  }

  next(input: number): number {
    const output = this.gain * input + this.a1 * this.last + this.a2 * this.beforeLast;
    this.beforeLast = this.last;
    this.last = output;
    return output;
  }
}
