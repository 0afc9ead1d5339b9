/** A phasor of length 1 that turns at a steady pitch: a sine without a call of the sine function for each sample. */
export class Rotator {
  private cosine: number;
  private sine: number;
  private readonly cosStep: number;
  private readonly sinStep: number;

  /** @param phaseRad  at the start */
  constructor(frequencyHz: number, sampleRateHz: number, phaseRad = 0) {
    const step = (2 * Math.PI * frequencyHz) / sampleRateHz;
    this.cosStep = Math.cos(step);
    this.sinStep = Math.sin(step);
    this.cosine = Math.cos(phaseRad);
    this.sine = Math.sin(phaseRad);
  }

  get cos(): number {
    return this.cosine;
  }

  get sin(): number {
    return this.sine;
  }

  /** One sample on. */
  turn(): void {
    const cosine = this.cosine * this.cosStep - this.sine * this.sinStep;
    const sine = this.sine * this.cosStep + this.cosine * this.sinStep;
    // One step of Newton's method towards length 1 keeps rounding from growing over hours.
    const correction = 1.5 - 0.5 * (cosine * cosine + sine * sine);
    this.cosine = cosine * correction;
    this.sine = sine * correction;
  }
}
