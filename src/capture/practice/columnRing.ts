import type { Complex } from '../../numeric/complex.ts';
import type { ColumnModel } from './columnModel.ts';

/**
 * The air moving in the mouth, as a phasor that turns with the fork: driven by the fork, slowed by the column's
 * impedance Z, (L′/v)·da/dt = drive − Z·a. In a steady state a = drive / Z; near a resonance it builds up and dies
 * with the column's own time constant 2Q/ω. The equation is the usual one of a resonator in the rotating frame.
 */
export class ColumnRing {
  private re = 0;
  private im = 0;

  /** The present motion. */
  get motion(): Complex {
    return { re: this.re, im: this.im };
  }

  /**
   * Moves on by a step in which drive and length hardly change (exact for constant ones, so never unstable).
   * @param stepS  > 0
   */
  step(model: ColumnModel, lengthM: number, drive: Complex, stepS: number): void {
    const z = model.impedance(lengthM);
    const square = z.re * z.re + z.im * z.im;
    const steadyRe = (drive.re * z.re + drive.im * z.im) / square;
    const steadyIm = (drive.im * z.re - drive.re * z.im) / square;
    const rate = (stepS * model.tubeSpeedMps) / model.effectiveLengthM(lengthM);
    const decay = Math.exp(-z.re * rate);
    const cos = decay * Math.cos(z.im * rate);
    const sin = -decay * Math.sin(z.im * rate);
    const re = this.re - steadyRe;
    const im = this.im - steadyIm;
    this.re = steadyRe + re * cos - im * sin;
    this.im = steadyIm + re * sin + im * cos;
  }
}
