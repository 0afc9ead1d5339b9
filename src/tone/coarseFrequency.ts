import FFT from 'fft.js';
import { lowerMedian } from '../numeric/quickselect.ts';
import type { ToneSegment } from './toneSegment.ts';

const SIZE = 512;
/** Values of one spectrum: 2.6 s of 100 a second. */
const WINDOW = 256;
/** A tone outside of the range is looked for up to this distance, Hz, and hides what is 25 dB under it. */
const BESIDE_HZ = 20;
const FAR_STRONGER = 300;

/**
 * Frequency of the strongest tone to a tenth of a hertz or so: spectra of 2.6 s, half overlapping, summed in power
 * (Welch 1967, IEEE Trans. Audio Electroacoust. 15, 70), the amplitude limited to its median so that neither a strike
 * nor a resonance outweighs the rest; highest bin, parabola between bins.
 */
export class CoarseFrequency {
  private readonly fft = new FFT(SIZE);
  private readonly input = new Float64Array(2 * SIZE);
  private readonly spectrum = new Float64Array(2 * SIZE);
  private readonly power = new Float64Array(SIZE);
  private window = hann(WINDOW);

  /**
   * @param rangeHz  how far from 0 Hz the tone may be
   * @returns Hz; null for nothing but zeros, or where all that is in reach is the foot of a tone outside of it
   */
  find(segment: ToneSegment, rangeHz: number): number | null {
    const { from, to, rateHz } = segment;
    const magnitudes = magnitudesOf(segment);
    const limit = medianOfEveryFourth(magnitudes);
    if (!(limit > 0)) return null;
    const reach = Math.floor((rangeHz * SIZE) / rateHz);
    const beside = Math.floor((BESIDE_HZ * SIZE) / rateHz);
    const length = Math.min(WINDOW, to - from);
    if (this.window.length !== length) this.window = hann(length);
    this.power.fill(0);
    for (let start = from; start + length <= to; start += Math.max(1, length >> 1)) {
      this.transform(segment, start, magnitudes, limit);
      this.addPower(Math.max(reach, beside) + 1);
    }
    const bin = this.highestBin(reach, beside);
    return bin === null ? null : (bin * rateHz) / SIZE;
  }

  private transform(
    { re, im, from }: ToneSegment,
    start: number,
    magnitudes: Float64Array,
    limit: number,
  ): void {
    const input = this.input;
    const length = this.window.length;
    for (let i = 0; i < length; i += 1) {
      const scale = this.window[i] * Math.min(1, limit / (magnitudes[start - from + i] || 1));
      input[2 * i] = scale * re[start + i];
      input[2 * i + 1] = scale * im[start + i];
    }
    input.fill(0, 2 * length);
    this.fft.transform(this.spectrum, input);
  }

  /** @param furthest  bin on either side of 0 Hz */
  private addPower(furthest: number): void {
    for (let offset = -furthest; offset <= furthest; offset += 1) {
      const bin = (offset + SIZE) % SIZE;
      this.power[bin] = this.power[bin] + this.spectrum[2 * bin] ** 2 + this.spectrum[2 * bin + 1] ** 2;
    }
  }

  /** @returns a fraction of a bin, too; null where all in reach is the foot of a tone outside of it */
  private highestBin(reach: number, beside: number): number | null {
    const at = (offset: number): number => this.power[(offset + SIZE) % SIZE];
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
}

function magnitudesOf({ re, im, from, to }: ToneSegment): Float64Array {
  const magnitudes = new Float64Array(to - from);
  for (let i = 0; i < magnitudes.length; i += 1) {
    const x = re[from + i];
    const y = im[from + i];
    magnitudes[i] = Math.sqrt(x * x + y * y);
  }
  return magnitudes;
}

function medianOfEveryFourth(magnitudes: Float64Array): number {
  const some = new Float64Array(Math.ceil(magnitudes.length / 4));
  for (let i = 0; i < some.length; i += 1) some[i] = magnitudes[4 * i];
  return lowerMedian(some);
}

const hann = (length: number): Float64Array =>
  Float64Array.from({ length }, (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / length));
