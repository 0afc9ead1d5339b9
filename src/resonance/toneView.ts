import type { FlankFrame } from '../tone/flankMeter.ts';
import type { ToneSeries } from '../tone/toneSeries.ts';

/**
 * A stretch of the narrow stream in the frame that turns with the fork, with the noise beside it: what the detector
 * looks at. Index k belongs to (firstIndex + k) / rateHz on the source's time axis.
 */
export interface ToneView {
  readonly re: Float64Array;
  readonly im: Float64Array;
  readonly length: number;
  readonly firstIndex: number;
  /** Values a second, about 100. */
  readonly rateHz: number;
  /** Noise-equivalent bandwidth of one value, Hz. */
  readonly bandwidthHz: number;
  /** Noise density at each value from the flanks, mean square per Hz. */
  readonly noiseDensity: Float64Array;
  /** Density at each value of the far flanks, 70–300 Hz away, mean square per Hz: where a voice's other harmonics lie. */
  readonly farDensity: Float64Array;
}

/** The values' mean over `step` neighbours each: the same view on a coarser grid. */
export interface CoarseView {
  readonly re: Float64Array;
  readonly im: Float64Array;
  readonly length: number;
  readonly step: number;
  /** Mean |noise|² of one coarse value. */
  readonly noiseMeanSquare: Float64Array;
}

/** Averages `step` values at a time; what is left at the end is dropped. */
export function coarsen(view: ToneView, step: number): CoarseView {
  const length = Math.floor(view.length / step);
  const re = new Float64Array(length);
  const im = new Float64Array(length);
  const noiseMeanSquare = new Float64Array(length);
  const bandwidthHz = Math.min(view.bandwidthHz, view.rateHz / step);
  for (let i = 0; i < length; i += 1) {
    let [x, y, n] = [0, 0, 0];
    for (let k = i * step; k < (i + 1) * step; k += 1) {
      x += view.re[k] as number;
      y += view.im[k] as number;
      n += view.noiseDensity[k] as number;
    }
    re[i] = x / step;
    im[i] = y / step;
    noiseMeanSquare[i] = (n / step) * bandwidthHz;
  }
  return { re, im, length, step, noiseMeanSquare };
}

/**
 * The series from one index to another, turned back by the fork's offset from the frequency that was moved to 0 Hz.
 * The noise at each value is the near flank's, of the frame whose middle is closest.
 * @param offsetHz  the fork's pitch less that frequency
 */
export function viewOf(series: ToneSeries, fromIndex: number, toIndex: number, offsetHz: number): ToneView {
  const length = toIndex - fromIndex;
  const re = new Float64Array(length);
  const im = new Float64Array(length);
  const noiseDensity = new Float64Array(length);
  const farDensity = new Float64Array(length);
  const turn = (-2 * Math.PI * offsetHz) / series.rateHz;
  const frames = series.flanks;
  const hopS = frames.length > 1 ? (frames[1] as FlankFrame).timeS - (frames[0] as FlankFrame).timeS : 1;
  for (let i = 0; i < length; i += 1) {
    const k = fromIndex + i;
    const cos = Math.cos(turn * k);
    const sin = Math.sin(turn * k);
    const x = series.re[k] as number;
    const y = series.im[k] as number;
    re[i] = x * cos - y * sin;
    im[i] = x * sin + y * cos;
    const frame = frames[Math.min(frames.length - 1, Math.round(k / series.rateHz / hopS))];
    noiseDensity[i] = frame?.nearDensity ?? 0;
    farDensity[i] = frame?.farDensity ?? 0;
  }
  return {
    re,
    im,
    length,
    firstIndex: fromIndex,
    rateHz: series.rateHz,
    bandwidthHz: series.bandwidthHz,
    noiseDensity,
    farDensity,
  };
}
