import FFT from 'fft.js';

const SIZE = 16_384;

/**
 * Third-octave levels of a sound, dB, the whole scaled to 70 dB overall.
 * @param sounds  each longer than 16 384 samples; their powers are added
 * @param centresHz  of the bands, below 0.44 of the rate
 */
export function thirdOctavesDb(
  sounds: readonly Float32Array[],
  sampleRateHz: number,
  centresHz: readonly number[],
): number[] {
  const fft = new FFT(SIZE);
  const power = new Float64Array(SIZE / 2);
  const frame = new Float64Array(SIZE);
  const spectrum = new Float64Array(2 * SIZE);
  for (const sound of sounds) {
    for (let at = 0; at + SIZE <= sound.length; at += SIZE) {
      for (let i = 0; i < SIZE; i += 1) {
        frame[i] = sound[at + i] * (0.5 - 0.5 * Math.cos((2 * Math.PI * i) / SIZE));
      }
      fft.realTransform(spectrum, frame);
      for (let k = 0; k < SIZE / 2; k += 1) power[k] += spectrum[2 * k] ** 2 + spectrum[2 * k + 1] ** 2;
    }
  }
  const total = sumOf(power);
  return centresHz.map((centreHz) => {
    const low = Math.ceil((centreHz * 2 ** (-1 / 6) * SIZE) / sampleRateHz);
    const high = Math.ceil((centreHz * 2 ** (1 / 6) * SIZE) / sampleRateHz);
    return 70 + 10 * Math.log10(sumOf(power.subarray(low, high)) / total);
  });
}

const sumOf = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0);
