/** A complex envelope: what a nearly pure tone does, with the carrier taken out. */
export interface Envelope {
  readonly rateHz: number;
  readonly re: Float64Array;
  readonly im: Float64Array;
}

export interface Tube {
  readonly radiusM: number;
  /** Far end closed (piston, water) or open. */
  readonly closed: boolean;
  /** Wall loss relative to a smooth rigid wall, >= 1. */
  readonly lossFactor: number;
  /** End correction relative to a free, unflanged rim; a fork or a hand near the mouth changes it. */
  readonly endFactor: number;
  readonly temperatureC: number;
}

/**
 * An air column driven at one pitch, as a transmission line with a round trip.
 *
 * The fork is a source of pressure at the mouth, in series with the radiation impedance. With r the reflection
 * seen down the tube and R that of the mouth seen from inside, the flow out of the mouth is (1 - r) / (1 - R r)
 * times a constant. In time this is a wave that runs to the far end and back, so all orders and the
 * ring-up come from one recursion. Losses: Keefe 1984 (wide tube); mouth: the unflanged fits of Dalmont,
 * Nederveen and Joly 2001; air: Keefe 1984 and c = 331.3 sqrt(T / 273.15), common practice.
 */
export class ColumnAtPitch {
  readonly waveSpeedMps: number;
  readonly endCorrectionM: number;
  private readonly wavenumber: number;
  private readonly attenuationNpPerM: number;
  private readonly mouthMagnitude: number;

  constructor(
    readonly tube: Tube,
    readonly frequencyHz: number,
  ) {
    const freeSpeed = 331.3 * Math.sqrt(1 + tube.temperatureC / 273.15);
    const fromReference = tube.temperatureC - 26.85;
    const density = 1.1769 * (1 - 0.00335 * fromReference);
    const viscosity = 1.846e-5 * (1 + 0.0025 * fromReference);
    const omega = 2 * Math.PI * frequencyHz;
    const rv = tube.radiusM * Math.sqrt((density * omega) / viscosity);
    this.waveSpeedMps = freeSpeed / (1 + 1.045 / rv);
    this.attenuationNpPerM =
      tube.lossFactor * (omega / freeSpeed) * (1.045 / rv + 1.08 / rv ** 2 + 0.75 / rv ** 3);
    this.wavenumber = omega / this.waveSpeedMps;
    const ka = (omega / freeSpeed) * tube.radiusM;
    this.mouthMagnitude = (1 + 0.2 * ka - 0.084 * ka ** 2) / (1 + 0.2 * ka + 0.416 * ka ** 2);
    this.endCorrectionM =
      tube.endFactor *
      tube.radiusM *
      0.6133 *
      ((1 + 0.044 * ka ** 2) / (1 + 0.19 * ka ** 2) - 0.02 * Math.sin(2 * ka) ** 2);
  }

  /** Length at the n-th resonance, m; closed (2n - 1) v / 4f - e, open n v / 2f - 2e. May be <= 0. */
  resonantLengthM(order: number): number {
    return this.tube.closed
      ? ((2 * order - 1) * this.waveSpeedMps) / (4 * this.frequencyHz) - this.endCorrectionM
      : (order * this.waveSpeedMps) / (2 * this.frequencyHz) - 2 * this.endCorrectionM;
  }

  /** Half of the width in length at half power of the mouth's radiation, m. */
  halfWidthM(order: number): number {
    const loss = 1 - this.roundTripMagnitude(this.resonantLengthM(order)) * this.mouthMagnitude;
    return loss / (2 * this.wavenumber);
  }

  /** Order whose resonance lies nearest to a length. */
  nearestOrder(lengthM: number): number {
    const spacing = this.waveSpeedMps / (2 * this.frequencyHz);
    return Math.max(1, Math.round((lengthM - this.resonantLengthM(1)) / spacing) + 1);
  }

  /** Steady flow out of the mouth for a unit pressure, up to a constant: [re, im]. */
  steadyFlow(lengthM: number): [number, number] {
    const [rRe, rIm] = this.farReflection(lengthM);
    const [mRe, mIm] = this.mouthReflection();
    const dRe = 1 - (mRe * rRe - mIm * rIm);
    const dIm = -(mRe * rIm + mIm * rRe);
    const power = dRe * dRe + dIm * dIm;
    const nRe = 1 - rRe;
    const nIm = -rIm;
    return [(nRe * dRe + nIm * dIm) / power, (nIm * dRe - nRe * dIm) / power];
  }

  /**
   * Flow out of the mouth while the length changes, with its ringing up and down.
   * @param lengthM  one length per value of the drive; >= 0.5 v / rate, so that a round trip is a sample or more
   */
  flow(lengthM: Float64Array, drive: Envelope): Envelope {
    const n = drive.re.length;
    const waveRe = new Float64Array(n);
    const waveIm = new Float64Array(n);
    const re = new Float64Array(n);
    const im = new Float64Array(n);
    const [mRe, mIm] = this.mouthReflection();
    for (let i = 0; i < n; i += 1) {
      const trip = Math.max(1, ((2 * lengthM[i]) / this.waveSpeedMps) * drive.rateHz);
      const back = i - trip;
      let pastRe = 0;
      let pastIm = 0;
      if (back >= 0) {
        const j = Math.floor(back);
        const part = back - j;
        const next = Math.min(j + 1, i - 1);
        pastRe = waveRe[j] + part * (waveRe[next] - waveRe[j]);
        pastIm = waveIm[j] + part * (waveIm[next] - waveIm[j]);
      }
      // The wave met the far end half a round trip ago; the length hardly changes in that time.
      const [rRe, rIm] = this.farReflection(lengthM[Math.max(0, Math.round(i - trip / 2))]);
      const backRe = rRe * pastRe - rIm * pastIm;
      const backIm = rRe * pastIm + rIm * pastRe;
      waveRe[i] = drive.re[i] + mRe * backRe - mIm * backIm;
      waveIm[i] = drive.im[i] + mRe * backIm + mIm * backRe;
      re[i] = waveRe[i] - backRe;
      im[i] = waveIm[i] - backIm;
    }
    return { rateHz: drive.rateHz, re, im };
  }

  private roundTripMagnitude(lengthM: number): number {
    return Math.exp(-2 * this.attenuationNpPerM * lengthM) * (this.tube.closed ? 1 : this.mouthMagnitude);
  }

  private farReflection(lengthM: number): [number, number] {
    const magnitude = this.roundTripMagnitude(lengthM);
    const phase = this.tube.closed
      ? -2 * this.wavenumber * lengthM
      : Math.PI - 2 * this.wavenumber * (lengthM + this.endCorrectionM);
    return [magnitude * Math.cos(phase), magnitude * Math.sin(phase)];
  }

  private mouthReflection(): [number, number] {
    const phase = Math.PI - 2 * this.wavenumber * this.endCorrectionM;
    return [this.mouthMagnitude * Math.cos(phase), this.mouthMagnitude * Math.sin(phase)];
  }
}
