/** A resonance of a tube: lets a steady pressure through as it is, and stands out at its own pitch. */
export class TractResonance {
  private a = 1;
  private b = 0;
  private c = 0;
  private last = 0;
  private lastButOne = 0;

  constructor(
    private readonly sampleRateHz: number,
    private readonly widthHz: number,
  ) {}

  tune(hz: number): void {
    [this.b, this.c] = poles(hz, this.widthHz, this.sampleRateHz);
    this.a = 1 - this.b - this.c;
  }

  next(value: number): number {
    const out = this.a * value + this.b * this.last + this.c * this.lastButOne;
    this.lastButOne = this.last;
    this.last = out;
    return out;
  }
}

/** A band of noise: nothing at 0 Hz, 1 at its middle; half as wide as its middle is high. */
export class NoiseBand {
  private a = 0;
  private b = 0;
  private c = 0;
  private drive = 0;
  private driveBefore = 0;
  private last = 0;
  private lastButOne = 0;

  constructor(private readonly sampleRateHz: number) {}

  tune(hz: number): void {
    [this.b, this.c] = poles(hz, 0.5 * hz, this.sampleRateHz);
    this.a = (1 + this.c) / 2;
  }

  next(value: number): number {
    const out = this.a * (value - this.driveBefore) + this.b * this.last + this.c * this.lastButOne;
    this.driveBefore = this.drive;
    this.drive = value;
    this.lastButOne = this.last;
    this.last = out;
    return out;
  }
}

/** Feedback of a pair of poles, below what the rate can hold. */
function poles(hz: number, widthHz: number, sampleRateHz: number): [number, number] {
  const radius = Math.exp((-Math.PI * widthHz) / sampleRateHz);
  const turn = (2 * Math.PI * Math.min(hz, 0.42 * sampleRateHz)) / sampleRateHz;
  return [2 * radius * Math.cos(turn), -radius * radius];
}
