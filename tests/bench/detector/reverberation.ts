import FFT from 'fft.js';
import type { Envelope } from './column.ts';
import type { Random } from './random.ts';

/**
 * A room's reverberation: noise that dies exponentially, after the direct sound.
 * @param timeS  time in which it falls by 60 dB
 * @param directToReverberantDb  energy of the direct sound against that of the tail
 */
export function reverberate(
  random: Random,
  dry: Float32Array,
  rateHz: number,
  timeS: number,
  directToReverberantDb: number,
): Float32Array {
  const size = 65536;
  const tail = Math.min(size / 2, Math.ceil(timeS * rateHz));
  const fft = new FFT(size);
  const response = new Float64Array(2 * size);
  let energy = 0;
  for (let i = Math.floor(0.004 * rateHz); i < tail; i += 1) {
    response[2 * i] = (random.next() - 0.5) * Math.exp((-6.9078 * i) / (timeS * rateHz));
    energy += response[2 * i] ** 2;
  }
  const scale = Math.sqrt(10 ** (-directToReverberantDb / 10) / energy);
  for (let i = 0; i < tail; i += 1) response[2 * i] *= scale;
  response[0] = 1;
  const spectrum = fft.createComplexArray() as number[];
  fft.transform(spectrum, response);
  const wet = new Float32Array(dry.length);
  const block = size - tail;
  const input = new Float64Array(2 * size);
  const output = fft.createComplexArray() as number[];
  // Two blocks at a time: one in the real part, the next in the imaginary part.
  for (let at = 0; at < dry.length; at += 2 * block) {
    for (let i = 0; i < block; i += 1) {
      input[2 * i] = dry[at + i] ?? 0;
      input[2 * i + 1] = dry[at + block + i] ?? 0;
    }
    fft.transform(output, input);
    for (let i = 0; i < 2 * size; i += 2) {
      const re = output[i];
      const im = output[i + 1];
      output[i] = re * spectrum[i] - im * spectrum[i + 1];
      output[i + 1] = re * spectrum[i + 1] + im * spectrum[i];
    }
    const back = fft.createComplexArray() as number[];
    fft.inverseTransform(back, output);
    for (let i = 0; i < size; i += 1) {
      if (at + i < wet.length) wet[at + i] += back[2 * i];
      if (at + block + i < wet.length) wet[at + block + i] += back[2 * i + 1];
    }
  }
  return wet;
}

/** The same for a tone, on its envelope: every echo comes with a random phase. Worked out 1000 times a second. */
export function reverberateTone(
  random: Random,
  dry: Envelope,
  timeS: number,
  directToReverberantDb: number,
): Envelope {
  const every = Math.max(1, Math.round(dry.rateHz / 1000));
  const rate = dry.rateHz / every;
  const count = Math.ceil(dry.re.length / every) + 1;
  const tail = Math.ceil(0.6 * timeS * rate);
  const tailRe = new Float64Array(tail);
  const tailIm = new Float64Array(tail);
  let energy = 0;
  for (let i = 4; i < tail; i += 1) {
    const level = Math.exp((-6.9078 * i) / (timeS * rate));
    tailRe[i] = level * random.gauss();
    tailIm[i] = level * random.gauss();
    energy += tailRe[i] ** 2 + tailIm[i] ** 2;
  }
  const scale = Math.sqrt(10 ** (-directToReverberantDb / 10) / energy);
  const echoRe = new Float64Array(count);
  const echoIm = new Float64Array(count);
  for (let i = 0; i < count; i += 1) {
    let sumRe = 0;
    let sumIm = 0;
    for (let j = 4; j < tail && j <= i; j += 1) {
      const k = (i - j) * every;
      if (k >= dry.re.length) continue;
      sumRe += tailRe[j] * dry.re[k] - tailIm[j] * dry.im[k];
      sumIm += tailRe[j] * dry.im[k] + tailIm[j] * dry.re[k];
    }
    echoRe[i] = scale * sumRe;
    echoIm[i] = scale * sumIm;
  }
  const re = new Float64Array(dry.re.length);
  const im = new Float64Array(dry.re.length);
  for (let i = 0; i < re.length; i += 1) {
    const j = Math.floor(i / every);
    const part = i / every - j;
    re[i] = dry.re[i] + echoRe[j] + part * (echoRe[j + 1] - echoRe[j]);
    im[i] = dry.im[i] + echoIm[j] + part * (echoIm[j + 1] - echoIm[j]);
  }
  return { rateHz: dry.rateHz, re, im };
}
