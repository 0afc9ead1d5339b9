/** A sine that dies away: one mode of a struck thing. Costs two multiplications a sample, no trigonometry. */
export class FadingMode {
  private re = 0;
  private im = 0;
  private readonly cos: number;
  private readonly sin: number;

  /** @throws RangeError unless frequencyHz is 0..sampleRateHz / 2 */
  constructor(frequencyHz: number, decayTimeS: number, sampleRateHz: number) {
    if (!(frequencyHz > 0 && frequencyHz < sampleRateHz / 2)) {
      throw new RangeError(`frequencyHz must be 0..${sampleRateHz / 2}, got ${frequencyHz}`);
    }
    const decay = Math.exp(-1 / (decayTimeS * sampleRateHz));
    const angle = (2 * Math.PI * frequencyHz) / sampleRateHz;
    this.cos = decay * Math.cos(angle);
    this.sin = decay * Math.sin(angle);
  }

  get isSilent(): boolean {
    return this.re === 0 && this.im === 0;
  }

  /** Adds a stroke; the sine starts at zero. */
  strike(amplitude: number): void {
    this.re += amplitude;
  }

  next(): number {
    const re = this.re * this.cos - this.im * this.sin;
    this.im = this.re * this.sin + this.im * this.cos;
    this.re = re;
    if (Math.abs(re) + Math.abs(this.im) < 1e-9) {
      this.re = 0;
      this.im = 0;
    }
    return this.im;
  }
}
