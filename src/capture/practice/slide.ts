/** How fast a hand can set the tube moving, m/s². A judgement. */
const ACCELERATION_MPS2 = 0.3;

/** The column's length as a hand moves it: it starts, glides and stops, and never jumps. */
export class Slide {
  private velocityMps = 0;
  private targetM: number;
  /** Speed that the hand aims at, m/s. */
  speedMps = 0.04;

  constructor(private positionM: number) {
    this.targetM = positionM;
  }

  get lengthM(): number {
    return this.positionM;
  }

  get goalM(): number {
    return this.targetM;
  }

  get isMoving(): boolean {
    return this.positionM !== this.targetM;
  }

  /** Where the hand goes next. */
  aimAt(lengthM: number): void {
    this.targetM = lengthM;
  }

  /** Puts the tube there at once. */
  place(lengthM: number): void {
    this.positionM = lengthM;
    this.targetM = lengthM;
    this.velocityMps = 0;
  }

  step(stepS: number): void {
    const left = this.targetM - this.positionM;
    if (left === 0) return;
    // The fastest speed from which the hand can still stop in time.
    const wanted =
      Math.sign(left) * Math.min(this.speedMps, Math.sqrt(2 * ACCELERATION_MPS2 * Math.abs(left)));
    const change = ACCELERATION_MPS2 * stepS;
    this.velocityMps += Math.max(-change, Math.min(change, wanted - this.velocityMps));
    const move = this.velocityMps * stepS;
    const arrives = Math.abs(left) < 2e-5 || (Math.abs(move) >= Math.abs(left) && move * left > 0);
    if (arrives) this.place(this.targetM);
    else this.positionM += move;
  }
}
