import FFT from 'fft.js';

const SIZE = 16_384;

/**
 * Long-term spectrum of speech, third octaves at 70 dB overall, men and women: Byrne et al. 1994,
 * doi 10.1121/1.410152. What lies below 250 and above 1000 Hz is from memory.
 */
export const LONG_TERM_SPEECH = [
  [100, 54.4],
  [125, 57.7],
  [160, 56.8],
  [200, 60.2],
  [250, 60.3],
  [315, 59.0],
  [400, 62.1],
  [500, 62.1],
  [630, 60.5],
  [800, 56.8],
  [1000, 53.7],
  [1250, 53.0],
  [1600, 52.0],
  [2000, 48.7],
  [2500, 48.1],
  [3150, 46.8],
  [4000, 45.6],
  [5000, 44.5],
  [6300, 44.3],
  [8000, 43.7],
  [10_000, 43.4],
  [12_500, 41.3],
  [16_000, 40.7],
] as const;

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
