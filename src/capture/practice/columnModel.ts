import { airFromReadings } from '../../air/airState.ts';
import type { AirReadings } from '../../air/airState.ts';
import { resonantLengthM } from '../../air/columnResonance.ts';
import { divide } from '../../numeric/complex.ts';
import type { Complex } from '../../numeric/complex.ts';
import { endCorrection, reflectionSize } from '../../air/endCorrection.ts';
import { speedOfSound } from '../../air/speedOfSound.ts';
import { wallLoss } from '../../air/wallLoss.ts';

/** What decides the column's answer to a fork. */
export interface ColumnMakeup {
  /** Of the sounding fork, Hz. */
  readonly frequencyHz: number;
  readonly radiusM: number;
  readonly ends: 'closed' | 'open';
  readonly air: AirReadings;
}

/** An air column as its mouth appears to one steady tone; every constant from `air`. */
export class ColumnModel {
  readonly freeSpeedMps: number;
  /** With the walls' slowing. */
  readonly tubeSpeedMps: number;
  /** Of one open end. */
  readonly endCorrectionM: number;
  private readonly waveNumber: number;
  private readonly attenuationNpPerM: number;
  /** What the open ends radiate, as a loss of the wave's amplitude per way there, nepers. */
  private readonly radiationNp: number;

  /** @throws RangeError naming the argument, its range and the value */
  constructor(private readonly makeup: ColumnMakeup) {
    const { frequencyHz, radiusM, ends, air } = makeup;
    this.freeSpeedMps = speedOfSound(airFromReadings(air)).speedMps;
    const loss = wallLoss(radiusM, frequencyHz, air.temperatureC, this.freeSpeedMps);
    this.tubeSpeedMps = this.freeSpeedMps * loss.speedRatio;
    this.attenuationNpPerM = loss.attenuationNpPerM;
    this.waveNumber = (2 * Math.PI * frequencyHz) / this.tubeSpeedMps;
    this.endCorrectionM = endCorrection(radiusM, frequencyHz, this.tubeSpeedMps).endCorrectionM;
    const openEnds = ends === 'open' ? 2 : 1;
    this.radiationNp = (-Math.log(reflectionSize(this.waveNumber * radiusM)) * openEnds) / 2;
  }

  /** Length of the column with its open ends' corrections, m. */
  effectiveLengthM(lengthM: number): number {
    return lengthM + this.endCorrectionM * (this.makeup.ends === 'open' ? 2 : 1);
  }

  /**
   * Impedance at the mouth over that of an endless tube, the air outside included: coth θ for a closed column,
   * tanh θ for an open one, θ = αL − ½ ln|R| + jk(L + e). It is smallest, and real, at a resonance.
   * @param lengthM  >= 0
   * @see Fletcher & Rossing 1998, The Physics of Musical Instruments, ch. 8
   */
  impedance(lengthM: number): Complex {
    const damping = this.attenuationNpPerM * lengthM + this.radiationNp;
    const phase = this.waveNumber * this.effectiveLengthM(lengthM);
    // sinh and cosh of a complex argument.
    const sinh = { re: Math.sinh(damping) * Math.cos(phase), im: Math.cosh(damping) * Math.sin(phase) };
    const cosh = { re: Math.cosh(damping) * Math.cos(phase), im: Math.sinh(damping) * Math.sin(phase) };
    return this.makeup.ends === 'open' ? divide(sinh, cosh) : divide(cosh, sinh);
  }

  /** How far from a resonance the mouth's power has fallen to half, m. @param lengthM  of the resonance, > 0 */
  halfWidthM(lengthM: number): number {
    return (this.attenuationNpPerM * lengthM + this.radiationNp) / this.waveNumber;
  }

  /** Lengths of all resonances from 0 to `longestM`, shortest first, m. */
  resonantLengthsM(longestM: number): number[] {
    const lengths: number[] = [];
    for (let order = 1; ; order += 1) {
      const lengthM = resonantLengthM({
        order,
        ends: this.makeup.ends,
        speedMps: this.tubeSpeedMps,
        frequencyHz: this.makeup.frequencyHz,
        endCorrectionM: this.endCorrectionM,
      });
      if (lengthM > longestM) return lengths;
      if (lengthM > 0) lengths.push(lengthM);
    }
  }
}
