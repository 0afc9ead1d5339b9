import { describe, expect, it } from 'vitest';
import { smoothedPower } from '../../../src/resonance/tonePower.ts';
import { viewOf } from '../../../src/resonance/toneView.ts';
import { hear, toneSeriesOf } from '../../support/hear.ts';
import { toneInNoise } from '../../support/tones.ts';

const AMPLITUDE = 0.05;

describe('level at the fork’s frequency', () => {
  // By hand: white noise of variance s² has the density 2 s²/fs on each positive frequency. The quadrature product
  // with a gain of 2 turns that into 4 s²/fs per Hz of the complex stream. In 44.4 Hz, 20 dB under the tone's A²:
  // 4 s² 44.4 / fs = A² / 100.
  const noiseAt20Db = (sampleRateHz: number): number =>
    AMPLITUDE * Math.sqrt(sampleRateHz / (4 * 44.4 * 100));

  for (const sampleRateHz of [44_100, 48_000, 96_000]) {
    for (const [frequencyHz, blockSize] of [
      [128, 127],
      [512, 4096],
      [2000, 128],
    ] as const) {
      it(`is right to 0.1 dB at 20 dB in-band signal-to-noise: ${frequencyHz} Hz, ${sampleRateHz} a second, blocks of ${blockSize}`, () => {
        const samples = toneInNoise(
          {
            sampleRateHz,
            durationS: 14,
            frequencyHz: frequencyHz + 0.4,
            amplitude: AMPLITUDE,
            noiseRms: noiseAt20Db(sampleRateHz),
          },
          frequencyHz + sampleRateHz,
        );
        const { points } = hear(samples, sampleRateHz, frequencyHz, blockSize);
        const steady = points.filter((point) => point.timeS > 2 && point.timeS < 13.8);
        expect(steady.length).toBeGreaterThan(200);
        let power = 0;
        for (const { toneDb } of steady) {
          if (toneDb === null) throw new Error('the tone was not heard');
          power += 10 ** (toneDb / 10) / steady.length;
        }
        // Chance alone leaves 0.03 dB over 12 s. 0 dB is a sine of amplitude 1, so a sine of amplitude A has 20 lg A.
        expect(Math.abs(10 * Math.log10(power) - 20 * Math.log10(AMPLITUDE))).toBeLessThan(0.1);
      });
    }
  }

  it('states its noise bandwidth: white noise has 4 s² B / fs in the narrow stream', () => {
    const sampleRateHz = 8000;
    const noiseRms = 0.01;
    const samples = toneInNoise(
      { sampleRateHz, durationS: 120, frequencyHz: 512, amplitude: 0, noiseRms },
      3,
    );
    const series = toneSeriesOf(samples, sampleRateHz, 512);
    let sum = 0;
    for (let k = 0; k < series.length; k += 1) {
      sum += series.re[k] ** 2 + series.im[k] ** 2;
    }
    const expected = (4 * noiseRms ** 2 * series.bandwidthHz) / sampleRateHz;
    // About 5300 independent values: 1.4 % of standard deviation.
    expect(Math.abs(sum / series.length / expected - 1)).toBeLessThan(0.04);
  });

  it('takes the room’s power off without bias where no tone sounds, and does not clip at zero', () => {
    const sampleRateHz = 8000;
    const samples = toneInNoise(
      { sampleRateHz, durationS: 400, frequencyHz: 512, amplitude: 0, noiseRms: 0.01 },
      11,
    );
    const series = toneSeriesOf(samples, sampleRateHz, 512);
    const view = viewOf(series, 0, series.length, 0);
    const noise = (4 * 0.01 ** 2 * (view.rateHz / 21)) / sampleRateHz;
    let [plain, clipped, count] = [0, 0, 0];
    for (let k = 20; k < view.length - 20; k += 21) {
      const power = smoothedPower(view, k, 10) / noise;
      plain += power;
      clipped += Math.max(0, power);
      count += 1;
    }
    expect(count).toBeGreaterThan(1500);
    // Mean of |z|² − P is 0, of its positive part 0.368 P (e^−1, complex Gaussian noise; references: exact). About
    // 1800 exponential values: 0.024 of standard deviation.
    expect(Math.abs(plain / count)).toBeLessThan(0.08);
    expect(Math.abs(clipped / count - Math.exp(-1))).toBeLessThan(0.08);
  });

  it('says “not heard” instead of a number under the noise', () => {
    const sampleRateHz = 8000;
    const samples = toneInNoise(
      { sampleRateHz, durationS: 60, frequencyHz: 512, amplitude: 0, noiseRms: 0.01 },
      5,
    );
    const { points } = hear(samples, sampleRateHz, 512);
    expect(points.length).toBeGreaterThan(1000);
    const heard = points.filter((point) => point.toneDb !== null);
    // Threshold P ln 1000: one in 1000 with the noise known; a little more with the noise measured.
    expect(heard.length / points.length).toBeLessThan(0.01);
    for (const point of points) expect(point.riseDb === null).toBe(point.toneDb === null);
  });

  it('rejects a frequency that the sample rate can’t carry, with the range', () => {
    expect(() => toneSeriesOf(new Float32Array(10), 8000, 4000)).toThrow(
      /frequencyHz must be 60\.\.3360.*4000/,
    );
    expect(() => toneSeriesOf(new Float32Array(10), 4000, 512)).toThrow(/sampleRateHz must be 8000/);
  });
});
