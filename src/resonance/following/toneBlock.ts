import type { ToneSeries } from '../../tone/toneSeries.ts';
import type { HeardBlock } from './placeState.ts';

/** A talker's other harmonics tell of what falls into the band itself: this part of the far side bands' density. */
const FAR_SHARE = 0.6;
/** What the side bands say is taken so many times: a harmonic right at the fork's frequency has less beside it. */
const NOISE_SHARE = 1.6;
/** What no model gets right (0.04 Np, 0.04 rad), and most: then nothing is known. */
const LEAST_VARIANCE = 0.0018;
const MOST_VARIANCE = 2;

/** Tone over noise power below which a block isn't heard at all. */
const HEARD = 2;

/** Block by block the tone in a frame that turns with the fork, with its uncertainty from the noise beside it. */
export class ToneBlock implements HeardBlock {
  logSize = 0.5;
  phaseRad = 0.5;
  variance = 0.5;
  /** Mean of the values, noise and all. */
  re = 0.5;
  im = 0.5;
  /** Noise in the mean, mean square. */
  noise = 0.5;
  private readonly series: ToneSeries;

  constructor(series: ToneSeries) {
    this.series = series;
  }

  /**
   * Reads the values [from, from + count). Side bands that aren't there yet are taken as the newest ones.
   * @param offsetHz  what the frame turns by, beside the frequency moved to 0 Hz
   */
  read(from: number, count: number, offsetHz: number): void {
    const { re, im, rateHz, bandwidthHz, sideBands } = this.series;
    const turn = (-2 * Math.PI * offsetHz) / rateHz;
    let x = 0;
    let y = 0;
    for (let k = from; k < from + count; k += 1) {
      const cos = Math.cos(turn * k);
      const sin = Math.sin(turn * k);
      x += re[k] * cos - im[k] * sin;
      y += re[k] * sin + im[k] * cos;
    }
    this.re = x / count;
    this.im = y / count;
    const frame = sideBands.frameAt(from + count / 2);
    const near = frame < 0 ? 0 : sideBands.near[frame];
    const far = frame < 0 ? 0 : sideBands.far[frame];
    this.noise = Math.max(near, FAR_SHARE * far) * Math.min(bandwidthHz, rateHz / count) + 1e-14;
    const power = this.re * this.re + this.im * this.im + 1e-30;
    this.logSize = 0.5 * Math.log(power);
    this.phaseRad = Math.atan2(this.im, this.re);
    // ln|z| and arg z each have half of the noise's share in the power.
    this.variance = Math.min(MOST_VARIANCE, (NOISE_SHARE * this.noise) / power / 2) + LEAST_VARIANCE;
  }

  /** Does a tone stand out of the noise at all? */
  get isHeard(): boolean {
    return this.re * this.re + this.im * this.im > HEARD * this.noise;
  }
}
