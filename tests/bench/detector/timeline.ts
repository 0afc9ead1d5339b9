import { slowNoise, type Random } from './random.ts';

/** Steps a second at which a hand's motion is worked out. */
export const MOTION_RATE_HZ = 1000;

/** A sliding hand: the column's length against time, with a person's uneven speed and a little tremor. */
export class Timeline {
  private readonly lengthsM: number[] = [];
  private readonly unevenness: Float64Array;
  private readonly tremorM: Float64Array;
  private positionM: number;
  private speedMps = 0;

  constructor(
    random: Random,
    startLengthM: number,
    private readonly durationS: number,
  ) {
    const steps = Math.ceil((durationS + 1) * MOTION_RATE_HZ);
    this.positionM = startLengthM;
    this.unevenness = slowNoise(
      random,
      steps,
      MOTION_RATE_HZ,
      random.uniform(0.5, 2),
      random.uniform(0.1, 0.35),
    );
    this.tremorM = slowNoise(random, steps, MOTION_RATE_HZ, 4, random.uniform(0.00002, 0.00015));
  }

  get timeS(): number {
    return this.lengthsM.length / MOTION_RATE_HZ;
  }

  get lengthM(): number {
    return this.positionM;
  }

  hold(seconds: number): void {
    const until = Math.min(this.durationS, this.timeS + seconds);
    while (this.timeS < until) this.step(0);
  }

  /** Slide towards a length; stops early when the time is up. */
  slideTo(targetM: number, speedMps: number, untilS = this.durationS): void {
    const direction = Math.sign(targetM - this.positionM);
    const until = Math.min(this.durationS, untilS);
    // A hand slows down as it comes near to where it wants to stop.
    while (this.timeS < until && (targetM - this.positionM) * direction > 0.0002) {
      const left = Math.abs(targetM - this.positionM);
      const wanted = Math.min(
        speedMps * Math.exp(this.unevenness[this.lengthsM.length]),
        0.002 + left / 0.15,
      );
      this.step(direction * wanted);
    }
  }

  /** Lengths at another rate, by linear interpolation, filled up to the end of the recording. */
  resampled(rateHz: number): Float64Array {
    this.hold(this.durationS - this.timeS + 0.01);
    const result = new Float64Array(Math.ceil(this.durationS * rateHz));
    for (let i = 0; i < result.length; i += 1) {
      const at = Math.min((i / rateHz) * MOTION_RATE_HZ, this.lengthsM.length - 1.001);
      const j = Math.floor(at);
      result[i] = this.lengthsM[j] + (at - j) * (this.lengthsM[j + 1] - this.lengthsM[j]);
    }
    return result;
  }

  private step(wantedMps: number): void {
    this.speedMps += (wantedMps - this.speedMps) * (1 / MOTION_RATE_HZ / 0.06);
    this.positionM += this.speedMps / MOTION_RATE_HZ;
    // Friction holds a resting tube: the tremor shows in proportion to the speed, fully from 5 mm/s on.
    const share = Math.min(1, Math.abs(this.speedMps) / 0.005);
    this.lengthsM.push(this.positionM + share * this.tremorM[this.lengthsM.length]);
  }
}
