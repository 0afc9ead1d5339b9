import { HAND } from './handModel.ts';

/** What a state's numbers are. Of pairs the second is the imaginary part, or the phase. */
export const X = 0;
export const V = 1;
export const Q = 2;
export const UNREST = 4;
export const LEVEL = 6;
export const SLOPE = 8;
export const SHARE = 10;
export const CROSSING = 12;
const SIZE = 14;
/** Where the crossing isn't looked for, its two numbers are left out. */
const SIZE_FOLLOWING = 12;

/** Degrees of freedom of what is heard beside the tone: few, since talk comes in bursts. */
const TAIL = 2;

/** One block of tone values as the states see it. */
export interface HeardBlock {
  /** ln of the tone's complex amplitude: ln of its size, and its phase. */
  logSize: number;
  phaseRad: number;
  /** Variance of each from noise. */
  variance: number;
}

/**
 * One Gaussian idea of where the column is and of all that the sound tells it by:
 * z = e^(level + unrest) · (1 + share · q), T q' = 1 − (1 + ix) q.
 *
 * x in half widths (0 at resonance, > 0 too long), its speed; q, the column's motion; the hand's unsteadiness, which
 * forgets itself; the logarithm of the direct sound and its slope (the fork's dying and the rest of its frequency); the
 * column's part over the direct sound at resonance (m e^{iθ} / d); x and speed in the moment when x first passed 0. An extended Kalman filter (Anderson & Moore 1979, Optimal
 * Filtering, ch. 8); earlier moments by adding them to the state (ibid., ch. 7).
 */
export class PlaceState {
  readonly mean = new Float64Array(SIZE);
  readonly covariance = new Float64Array(SIZE * SIZE);
  weight = 0;
  ringUpS = 0.05;
  /** When x first passed 0, s; NaN where it hasn't. */
  crossedS = NaN;
  /** Workspace of `observe` and `merge`. */
  private readonly gainRe = new Float64Array(SIZE);
  private readonly gainIm = new Float64Array(SIZE);
  /** Whether x passes 0 in this block. */
  private crosses = false;
  /** False: the crossing is of no interest (any more). */
  seeksCrossing = false;

  private get size(): number {
    return this.seeksCrossing ? SIZE : SIZE_FOLLOWING;
  }

  copy(other: PlaceState): void {
    this.mean.set(other.mean);
    this.covariance.set(other.covariance);
    this.weight = other.weight;
    this.ringUpS = other.ringUpS;
    this.crossedS = other.crossedS;
    this.seeksCrossing = other.seeksCrossing;
    this.crosses = other.crosses;
  }

  variance(i: number): number {
    return this.covariance[i * SIZE + i];
  }

  covarianceOf(i: number, j: number): number {
    return this.covariance[i * SIZE + j];
  }

  setCovariance(i: number, j: number, value: number): void {
    this.covariance[i * SIZE + j] = value;
    this.covariance[j * SIZE + i] = value;
  }

  /** Makes a number uncertain by so much, without regard to all others. */
  setVariance(i: number, variance: number): void {
    for (let j = 0; j < SIZE; j += 1) this.setCovariance(i, j, 0);
    this.covariance[i * SIZE + i] = variance;
  }

  /** Adds to a number's variance. */
  blur(i: number, variance: number): void {
    this.covariance[i * SIZE + i] = this.variance(i) + variance;
  }

  /** Row and column `to` become those of `from`. */
  repeat(to: number, from: number): void {
    const P = this.covariance;
    for (let i = 0; i < SIZE; i += 1) P[to * SIZE + i] = P[from * SIZE + i];
    for (let i = 0; i < SIZE; i += 1) P[i * SIZE + to] = P[i * SIZE + from];
    this.mean[to] = this.mean[from];
  }

  /** Sets q to what a column does that keeps this speed, and lets it follow x. */
  settle(): void {
    const x = this.mean[X];
    const power = 1 + x * x;
    const re = 1 / power;
    const im = -x / power;
    // dq/dx = −i q² in the steady state; a moving column lags by T dq/dt.
    const slopeRe = 2 * re * im;
    const slopeIm = im * im - re * re;
    const lag = this.ringUpS * this.mean[V];
    this.mean[Q] = re - lag * slopeRe;
    this.mean[Q + 1] = im - lag * slopeIm;
    const P = this.covariance;
    for (let i = 0; i < SIZE; i += 1) {
      this.setCovariance(Q, i, slopeRe * P[i]);
      this.setCovariance(Q + 1, i, slopeIm * P[i]);
    }
    const variance = this.variance(X);
    this.setCovariance(Q, Q, slopeRe * slopeRe * variance);
    this.setCovariance(Q, Q + 1, slopeRe * slopeIm * variance);
    this.setCovariance(Q + 1, Q + 1, slopeIm * slopeIm * variance);
  }

  /**
   * On to the next block, all but what becomes of the speed: see `goOn`.
   * @param stepS  from one block's middle to the next one's
   * @param timeS  the next block's middle
   */
  advance(stepS: number, timeS: number): void {
    const { mean, covariance: P } = this;
    const size = this.size;
    const x = mean[X];
    this.ring(stepS);
    const pull = HAND.pull * stepS;
    const forget = Math.exp(-stepS / HAND.memoryS);
    // Rows, then columns, of F P Fᵀ: v −= pull x; x += step v; level += step slope; the unrest forgets itself.
    for (let i = 0; i < size; i += 1) {
      const speed = P[V * SIZE + i] - pull * P[i];
      P[i] = P[i] + stepS * speed;
      P[V * SIZE + i] = speed;
      for (let k = 0; k < 2; k += 1) {
        const level = (LEVEL + k) * SIZE + i;
        P[level] = P[level] + stepS * P[(SLOPE + k) * SIZE + i];
        P[(UNREST + k) * SIZE + i] = forget * P[(UNREST + k) * SIZE + i];
      }
    }
    for (let row = 0; row < size * SIZE; row += SIZE) {
      const speed = P[row + V] - pull * P[row];
      P[row] = P[row] + stepS * speed;
      P[row + V] = speed;
      for (let k = 0; k < 2; k += 1) {
        P[row + LEVEL + k] = P[row + LEVEL + k] + stepS * P[row + SLOPE + k];
        P[row + UNREST + k] = forget * P[row + UNREST + k];
      }
    }
    const speed = mean[V] - pull * x;
    mean[X] = x + stepS * speed;
    mean[V] = speed;
    this.moveLevel(stepS, forget);
    this.crosses = this.seeksCrossing && Number.isNaN(this.crossedS) && x * mean[X] <= 0;
    if (this.crosses) this.crossedS = timeS;
  }

  /** What becomes of the speed in this block. @param isChange  true: the hand suddenly takes another one */
  goOn(stepS: number, isChange: boolean): void {
    const { mean, covariance: P } = this;
    const size = this.size;
    const keep = isChange ? HAND.changeKeeps : Math.exp(-stepS / HAND.speedMemoryS);
    const speed = mean[V];
    mean[V] = keep * speed;
    for (let i = 0; i < size; i += 1) P[V * SIZE + i] = keep * P[V * SIZE + i];
    for (let i = 0; i < size; i += 1) P[i * SIZE + V] = keep * P[i * SIZE + V];
    const unrest = isChange
      ? HAND.change ** 2 + (HAND.changeShare * speed) ** 2
      : (HAND.waver ** 2 + (HAND.waverShare * speed) ** 2) * stepS;
    // White acceleration through one block.
    P[0] = P[0] + (unrest * stepS * stepS) / 3 + HAND.jitter ** 2 * stepS;
    this.setCovariance(X, V, P[V] + (unrest * stepS) / 2);
    this.blur(V, unrest);
    if (!this.crosses) return;
    this.crosses = false;
    this.repeat(CROSSING, X);
    this.repeat(CROSSING + 1, V);
  }

  /** On to the next block while the column's motion is given: only level, slope and unrest go on. */
  advanceLevel(stepS: number): void {
    const P = this.covariance;
    const forget = Math.exp(-stepS / HAND.memoryS);
    for (let k = 0; k < 2; k += 1) {
      for (let i = 0; i < SIZE; i += 1) {
        const level = (LEVEL + k) * SIZE + i;
        P[level] = P[level] + stepS * P[(SLOPE + k) * SIZE + i];
        P[(UNREST + k) * SIZE + i] = forget * P[(UNREST + k) * SIZE + i];
      }
      for (let row = 0; row < SIZE * SIZE; row += SIZE) {
        P[row + LEVEL + k] = P[row + LEVEL + k] + stepS * P[row + SLOPE + k];
        P[row + UNREST + k] = forget * P[row + UNREST + k];
      }
    }
    this.moveLevel(stepS, forget);
  }

  /** Means of level and unrest, and what the hand adds to their uncertainty. */
  private moveLevel(stepS: number, forget: number): void {
    const { mean } = this;
    const share = (HAND.shareDrift ** 2 * stepS * (mean[SHARE] ** 2 + mean[SHARE + 1] ** 2)) / 2;
    for (let k = 0; k < 2; k += 1) {
      mean[LEVEL + k] = mean[LEVEL + k] + stepS * mean[SLOPE + k];
      mean[UNREST + k] = forget * mean[UNREST + k];
      this.blur(UNREST + k, HAND.unrest ** 2 * (1 - forget * forget));
      this.blur(LEVEL + k, HAND.drift ** 2 * stepS);
      this.blur(SLOPE + k, HAND.slopeDrift ** 2 * stepS);
      this.blur(SHARE + k, share);
    }
  }

  /** q through a step: exact for the detuning in its middle, relaxing to r = 1 / (1 + ix) by E = e^(−(1 + ix) step / T). */
  private ring(stepS: number): void {
    const { mean, covariance: P, ringUpS } = this;
    const size = this.size;
    const x = mean[X] + 0.5 * stepS * mean[V];
    const power = 1 + x * x;
    const restRe = 1 / power;
    const restIm = -x / power;
    const part = stepS / ringUpS;
    const decay = Math.exp(-part);
    const eRe = decay * Math.cos(x * part);
    const eIm = -decay * Math.sin(x * part);
    const offRe = mean[Q] - restRe;
    const offIm = mean[Q + 1] - restIm;
    // ∂q/∂x = r' (1 − E) + (q − r) E', r' = −i r², E' = −i (step / T) E.
    const rRe = 2 * restRe * restIm;
    const rIm = restIm * restIm - restRe * restRe;
    const dRe = part * eIm;
    const dIm = -part * eRe;
    const byXRe = rRe * (1 - eRe) + rIm * eIm + offRe * dRe - offIm * dIm;
    const byXIm = rIm * (1 - eRe) - rRe * eIm + offRe * dIm + offIm * dRe;
    const re = Q * SIZE;
    const im = re + SIZE;
    for (let i = 0; i < size; i += 1) {
      const a = P[re + i];
      const b = P[im + i];
      const dx = P[i] + 0.5 * stepS * P[V * SIZE + i];
      P[re + i] = eRe * a - eIm * b + byXRe * dx;
      P[im + i] = eIm * a + eRe * b + byXIm * dx;
    }
    for (let row = 0; row < size * SIZE; row += SIZE) {
      const a = P[row + Q];
      const b = P[row + Q + 1];
      const dx = P[row] + 0.5 * stepS * P[row + V];
      P[row + Q] = eRe * a - eIm * b + byXRe * dx;
      P[row + Q + 1] = eIm * a + eRe * b + byXIm * dx;
    }
    mean[Q] = restRe + offRe * eRe - offIm * eIm;
    mean[Q + 1] = restIm + offRe * eIm + offIm * eRe;
  }

  /**
   * Takes what was heard in, and weighs this state by how well it foresaw it. Rare surprises count less than a Gaussian
   * would have them (Student's t; West 1981, J. R. Stat. Soc. B 43, 157).
   * @returns how far off it was: chi-square with two degrees of freedom where the model holds
   */
  observe(heard: HeardBlock): number {
    const { mean, covariance: P } = this;
    const size = this.size;
    const shareRe = mean[SHARE];
    const shareIm = mean[SHARE + 1];
    const qRe = mean[Q];
    const qIm = mean[Q + 1];
    // w = 1 + share · q; ∂ln w/∂q = share / w, ∂ln w/∂share = q / w.
    const wRe = 1 + shareRe * qRe - shareIm * qIm;
    const wIm = shareRe * qIm + shareIm * qRe;
    const square = Math.max(LEAST_SQUARE, wRe * wRe + wIm * wIm);
    const aRe = (shareRe * wRe + shareIm * wIm) / square;
    const aIm = (shareIm * wRe - shareRe * wIm) / square;
    const bRe = (qRe * wRe + qIm * wIm) / square;
    const bIm = (qIm * wRe - qRe * wIm) / square;
    const { gainRe: re, gainIm: im } = this;
    for (let i = 0; i < size; i += 1) {
      const q0 = P[Q * SIZE + i];
      const q1 = P[(Q + 1) * SIZE + i];
      const s0 = P[SHARE * SIZE + i];
      const s1 = P[(SHARE + 1) * SIZE + i];
      re[i] = aRe * q0 - aIm * q1 + bRe * s0 - bIm * s1 + P[UNREST * SIZE + i] + P[LEVEL * SIZE + i];
      im[i] =
        aIm * q0 + aRe * q1 + bIm * s0 + bRe * s1 + P[(UNREST + 1) * SIZE + i] + P[(LEVEL + 1) * SIZE + i];
    }
    const s00 =
      aRe * re[Q] -
      aIm * re[Q + 1] +
      bRe * re[SHARE] -
      bIm * re[SHARE + 1] +
      re[UNREST] +
      re[LEVEL] +
      heard.variance;
    const s01 =
      aIm * re[Q] + aRe * re[Q + 1] + bIm * re[SHARE] + bRe * re[SHARE + 1] + re[UNREST + 1] + re[LEVEL + 1];
    const s11 =
      aIm * im[Q] +
      aRe * im[Q + 1] +
      bIm * im[SHARE] +
      bRe * im[SHARE + 1] +
      im[UNREST + 1] +
      im[LEVEL + 1] +
      heard.variance;
    const offRe = heard.logSize - 0.5 * Math.log(square) - mean[UNREST] - mean[LEVEL];
    const turn = heard.phaseRad - Math.atan2(wIm, wRe) - mean[UNREST + 1] - mean[LEVEL + 1];
    const offIm = turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI));
    const determinant = s00 * s11 - s01 * s01;
    const surprise = (s11 * offRe * offRe - 2 * s01 * offRe * offIm + s00 * offIm * offIm) / determinant;
    const trust = Math.min(1, (TAIL + 2) / (TAIL + surprise));
    this.weight *= (1 + surprise / TAIL) ** (-(TAIL + 2) / 2) / Math.sqrt(determinant);
    const i00 = (trust * s11) / determinant;
    const i01 = (-trust * s01) / determinant;
    const i11 = (trust * s00) / determinant;
    for (let i = 0; i < size; i += 1) {
      const byRe = re[i] * i00 + im[i] * i01;
      const byIm = re[i] * i01 + im[i] * i11;
      mean[i] = mean[i] + byRe * offRe + byIm * offIm;
      for (let j = i; j < size; j += 1) {
        const value = P[i * SIZE + j] - byRe * re[j] - byIm * im[j];
        P[i * SIZE + j] = value;
        P[j * SIZE + i] = value;
      }
    }
    return surprise;
  }

  /** Are two states nearly one? */
  isNear(other: PlaceState): boolean {
    const dx = this.mean[X] - other.mean[X];
    const dv = this.mean[V] - other.mean[V];
    if (dx * dx > 0.5 * Math.min(this.variance(X), other.variance(X))) return false;
    if (dv * dv > Math.max(this.variance(V), other.variance(V))) return false;
    let apart = 0;
    for (let k = SHARE; k < SHARE + 2; k += 1) {
      apart += (this.mean[k] - other.mean[k]) ** 2 / (this.variance(k) + 1e-6);
    }
    return apart < 2;
  }

  /** Becomes the Gaussian with the mean and covariance of both together. */
  merge(other: PlaceState): void {
    const { mean, covariance: P } = this;
    const whole = this.weight + other.weight;
    const share = other.weight / whole;
    const apart = this.gainRe;
    for (let i = 0; i < SIZE; i += 1) apart[i] = other.mean[i] - mean[i];
    const turns = Math.round(apart[LEVEL + 1] / (2 * Math.PI));
    apart[LEVEL + 1] = apart[LEVEL + 1] - 2 * Math.PI * turns;
    if (!Object.is(this.crossedS, other.crossedS)) {
      // Crossings at different moments have no common mean: the weightier one's stays.
      apart[CROSSING] = 0;
      apart[CROSSING + 1] = 0;
    }
    for (let i = 0; i < SIZE; i += 1) {
      for (let j = 0; j < SIZE; j += 1) {
        const at = i * SIZE + j;
        const between = share * (1 - share) * apart[i] * apart[j];
        P[at] = (1 - share) * P[at] + share * other.covariance[at] + between;
      }
      mean[i] = mean[i] + share * apart[i];
    }
    this.weight = whole;
  }
}

/** Where direct sound and column nearly cancel, the logarithm runs away. */
const LEAST_SQUARE = 1e-3;
