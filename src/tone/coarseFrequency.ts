import FFT from 'fft.js';
import { partedMedian } from '../numeric/quickselect.ts';

const SIZE = 512;
/** Values of one stretch: 2.6 s of 100 a second. */
const SEGMENT = 256;
/** A tone outside of the range is looked for up to this distance, Hz, and hides what is 25 dB under it. */
const BESIDE_HZ = 20;
const FAR_STRONGER = 300;

/** Room to work in, kept from one search to the next. */
const fft = new FFT(SIZE);
const data = new Float64Array(2 * SIZE);
const out = new Float64Array(2 * SIZE);
const power = new Float64Array(SIZE);
let magnitudes = new Float64Array(SIZE);
let parted = new Float64Array(SIZE);
let window = hann(SEGMENT);

/**
 * Pitch of the strongest tone within ±rangeHz to a tenth of a hertz or so: spectra of 2.6 s stretches, amplitude
 * limited so that neither a strike nor a resonance outweighs the rest, summed in power; highest bin, parabola between
 * bins.
 * @param re  narrow values, real parts; `im` alike
 * @param from  first index; `to`: one past the last
 * @param rateHz  narrow values a second
 * @returns Hz; null for nothing but zeros, or where all that is in reach is the foot of a tone outside of it
 */
export function coarsePitchHz(
  re: ArrayLike<number>,
  im: ArrayLike<number>,
  from: number,
  to: number,
  rateHz: number,
  rangeHz: number,
): number | null {
  const limit = medianMagnitude(re, im, from, to);
  if (!(limit > 0)) return null;
  const reach = Math.floor((rangeHz * SIZE) / rateHz);
  const beside = Math.floor((BESIDE_HZ * SIZE) / rateHz);
  const furthest = Math.max(reach, beside) + 1;
  const length = Math.min(SEGMENT, to - from);
  if (window.length !== length) window = hann(length);
  power.fill(0);
  for (let start = from; start + length <= to; start += Math.max(1, length >> 1)) {
    for (let i = 0; i < length; i += 1) {
      const scale = window[i] * Math.min(1, limit / (magnitudes[start - from + i] || 1));
      data[2 * i] = scale * re[start + i];
      data[2 * i + 1] = scale * im[start + i];
    }
    data.fill(0, 2 * length);
    fft.transform(out, data);
    for (let bin = -furthest; bin <= furthest; bin += 1) {
      const at = 2 * ((bin + SIZE) % SIZE);
      power[at / 2] = power[at / 2] + out[at] ** 2 + out[at + 1] ** 2;
    }
  }
  const bin = highestBin(reach, beside);
  return bin === null ? null : (bin * rateHz) / SIZE;
}

/** Fills `magnitudes`. @returns the median of every fourth */
function medianMagnitude(re: ArrayLike<number>, im: ArrayLike<number>, from: number, to: number): number {
  const count = to - from;
  if (magnitudes.length < count) {
    magnitudes = new Float64Array(2 * count);
    parted = new Float64Array(count);
  }
  for (let i = 0; i < count; i += 1) {
    const x = re[from + i];
    const y = im[from + i];
    magnitudes[i] = Math.sqrt(x * x + y * y);
  }
  const some = Math.ceil(count / 4);
  for (let i = 0; i < some; i += 1) parted[i] = magnitudes[4 * i];
  return partedMedian(parted, some);
}

const at = (bin: number): number => power[(bin + SIZE) % SIZE];

/** @returns a fraction of a bin, too; null where all in reach is the foot of a tone outside of it */
function highestBin(reach: number, beside: number): number | null {
  let best = 0;
  for (let bin = -reach; bin <= reach; bin += 1) if (at(bin) > at(best)) best = bin;
  // What is left beside a far stronger tone outside of the range is its foot, or noise under it.
  let outside = 0;
  for (let bin = reach + 1; bin <= beside; bin += 1) outside = Math.max(outside, at(bin), at(-bin));
  if (outside > FAR_STRONGER * at(best)) return null;
  if (Math.abs(best) === reach && at(best + Math.sign(best)) > at(best)) return null;
  const curve = at(best - 1) - 2 * at(best) + at(best + 1);
  return best + (curve < 0 ? (0.5 * (at(best - 1) - at(best + 1))) / curve : 0);
}

function hann(length: number): Float64Array {
  return Float64Array.from({ length }, (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / length));
}
