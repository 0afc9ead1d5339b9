import { rangeSum } from '../numeric/prefixSum.ts';
import type { ToneView } from './toneView.ts';

/** Noise-equivalent bandwidth of the mean of n values in a row, Hz. */
export const meanBandwidthHz = (view: ToneView, n: number): number =>
  Math.min(view.bandwidthHz, view.rateHz / n);

/** Power around an index: |mean of 2·half+1 values|², of as many of them as the view holds. */
export function coherentPower(view: ToneView, index: number, half: number): number {
  const from = Math.max(0, index - half);
  const to = Math.min(view.length, index + half + 1);
  const x = rangeSum(view.sums.re, from, to);
  const y = rangeSum(view.sums.im, from, to);
  return (x * x + y * y) / ((to - from) * (to - from));
}

/** What noise alone adds to the coherent power there, on average. */
export function noisePower(view: ToneView, index: number, half: number): number {
  const from = Math.max(0, index - half);
  const to = Math.min(view.length, index + half + 1);
  const n = to - from;
  return (rangeSum(view.sums.noiseDensity, from, to) / n) * meanBandwidthHz(view, n);
}

/** Tone power around an index: the coherent power, its noise taken off (may be negative). */
export const smoothedPower = (view: ToneView, index: number, half: number): number =>
  coherentPower(view, index, half) - noisePower(view, index, half);

/** Mean |value|² over [from, to), as far as the view reaches; 0 of none. */
export function meanPower(view: ToneView, fromIndex: number, toIndex: number): number {
  const from = Math.max(0, fromIndex);
  const to = Math.min(view.length, toIndex);
  let sum = 0;
  for (let k = from; k < to; k += 1) sum += view.re[k] ** 2 + view.im[k] ** 2;
  return sum / Math.max(1, to - from);
}

/** Mean phasor of 2·half+1 values around an index, of as many of them as the view holds. */
export function smoothedPhasor(view: ToneView, index: number, half: number): { re: number; im: number } {
  const from = Math.max(0, index - half);
  const to = Math.min(view.length, index + half + 1);
  const n = to - from;
  return { re: rangeSum(view.sums.re, from, to) / n, im: rangeSum(view.sums.im, from, to) / n };
}
