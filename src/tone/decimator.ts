/** Most values that a decimator takes at a time. */
export const MOST_AT_ONCE = 4096;

/**
 * Decimation of a complex stream by a band-pass around one frequency: a symmetric low-pass whose taps turn with that
 * frequency, so that they run only where an output is due. Each output depends on its own stretch alone.
 */
export class ComplexDecimator {
  /** What the last push has given; filled anew by the next. */
  readonly re: Float64Array;
  readonly im: Float64Array;
  private readonly step: number;
  private readonly length: number;
  /** Half of the taps, from the middle outwards: real parts are even about it, imaginary ones odd. */
  private readonly tapsRe: Float64Array;
  private readonly tapsIm: Float64Array;
  private readonly bufferRe: Float64Array;
  private readonly bufferIm: Float64Array;
  private filled: number;

  /**
   * @param taps  low-pass, symmetric, of odd length and at least `step` of them
   * @param turnRad  the band's middle, rad from one input value to the next
   * @param step  one output for so many inputs: output k belongs to input k × step
   */
  constructor(taps: Float64Array, turnRad: number, step: number) {
    const half = (taps.length - 1) / 2;
    this.length = taps.length;
    this.step = step;
    const outer = taps.subarray(half);
    this.tapsRe = outer.map((tap, i) => tap * Math.cos(turnRad * i));
    this.tapsIm = outer.map((tap, i) => -tap * Math.sin(turnRad * i));
    this.bufferRe = new Float64Array(taps.length + MOST_AT_ONCE);
    this.bufferIm = new Float64Array(taps.length + MOST_AT_ONCE);
    this.re = new Float64Array(Math.ceil((taps.length + MOST_AT_ONCE) / step));
    this.im = new Float64Array(this.re.length);
    // Before the first value was silence.
    this.filled = half;
  }

  /** @param count  values taken of `re` and `im`, 0..MOST_AT_ONCE @returns how many came out */
  push(re: Float64Array, im: Float64Array, count: number): number {
    for (let i = 0; i < count; i += 1) {
      this.bufferRe[this.filled + i] = re[i];
      this.bufferIm[this.filled + i] = im[i];
    }
    this.filled += count;
    let start = 0;
    let out = 0;
    for (; start + this.length <= this.filled; start += this.step) {
      this.filter(start + this.tapsRe.length - 1, out);
      out += 1;
    }
    if (start > 0) {
      this.bufferRe.copyWithin(0, start, this.filled);
      this.bufferIm.copyWithin(0, start, this.filled);
      this.filled -= start;
    }
    return out;
  }

  private filter(middle: number, out: number): void {
    const re = this.bufferRe;
    const im = this.bufferIm;
    const tapsRe = this.tapsRe;
    const tapsIm = this.tapsIm;
    let x = re[middle] * tapsRe[0];
    let y = im[middle] * tapsRe[0];
    for (let i = 1; i < tapsRe.length; i += 1) {
      const tapRe = tapsRe[i];
      const tapIm = tapsIm[i];
      const earlierRe = re[middle - i];
      const earlierIm = im[middle - i];
      const laterRe = re[middle + i];
      const laterIm = im[middle + i];
      x += (laterRe + earlierRe) * tapRe - (laterIm - earlierIm) * tapIm;
      y += (laterIm + earlierIm) * tapRe + (laterRe - earlierRe) * tapIm;
    }
    this.re[out] = x;
    this.im[out] = y;
  }
}

/** The same for a real stream; the taps may be of even length, too. */
export class RealDecimator {
  readonly re: Float64Array;
  readonly im: Float64Array;
  private readonly step: number;
  private readonly length: number;
  private readonly tapsRe: Float64Array;
  private readonly tapsIm: Float64Array;
  /** The tap in the middle; 0 where their number is even. */
  private readonly middleTap: number;
  private readonly buffer: Float64Array;
  private filled: number;

  /** See ComplexDecimator; where the taps are even in number, output k belongs to input k × step − ½. */
  constructor(taps: Float64Array, turnRad: number, step: number) {
    const pairs = taps.length >> 1;
    const isOdd = taps.length % 2 === 1;
    const distance = (i: number): number => (isOdd ? i + 1 : i + 0.5);
    const outer = taps.subarray(taps.length - pairs);
    this.tapsRe = outer.map((tap, i) => tap * Math.cos(turnRad * distance(i)));
    this.tapsIm = outer.map((tap, i) => -tap * Math.sin(turnRad * distance(i)));
    this.middleTap = isOdd ? taps[pairs] : 0;
    this.length = taps.length;
    this.step = step;
    this.buffer = new Float64Array(taps.length + MOST_AT_ONCE);
    this.re = new Float64Array(Math.ceil((taps.length + MOST_AT_ONCE) / step));
    this.im = new Float64Array(this.re.length);
    this.filled = pairs;
  }

  /** @param samples  0..MOST_AT_ONCE @returns how many came out */
  push(samples: Float32Array): number {
    const buffer = this.buffer;
    const tapsRe = this.tapsRe;
    const tapsIm = this.tapsIm;
    buffer.set(samples, this.filled);
    this.filled += samples.length;
    let start = 0;
    let out = 0;
    for (; start + this.length <= this.filled; start += this.step) {
      const before = start + tapsRe.length - 1;
      const after = start + this.length - tapsRe.length;
      let x = buffer[after - 1] * this.middleTap;
      let y = 0;
      for (let i = 0; i < tapsRe.length; i += 1) {
        const earlier = buffer[before - i];
        const later = buffer[after + i];
        x += (later + earlier) * tapsRe[i];
        y += (later - earlier) * tapsIm[i];
      }
      this.re[out] = x;
      this.im[out] = y;
      out += 1;
    }
    buffer.copyWithin(0, start, this.filled);
    this.filled -= start;
    return out;
  }
}
