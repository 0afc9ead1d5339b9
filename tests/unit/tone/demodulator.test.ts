import { describe, expect, it } from 'vitest';
import { QuadratureDemodulator } from '../../../src/tone/demodulator.ts';
import { toneInNoise } from '../../support/tones.ts';

const FORK_HZ = 512;
const DURATION_S = 0.8;

/** Amplitude in dB at one offset from the fork’s frequency that a tone of amplitude 1 leaves in a stream, its beginning left out. */
function leftDb(sampleRateHz: number, toneHz: number, stream: 'wide' | 'narrow', offHz: number): number {
  const samples = toneInNoise(
    { sampleRateHz, durationS: DURATION_S, frequencyHz: toneHz, amplitude: 1, noiseRms: 0 },
    1,
  );
  const band = new QuadratureDemodulator(sampleRateHz, FORK_HZ);
  const rateHz = stream === 'wide' ? band.wideRateHz : band.narrowRateHz;
  let [re, im, seen, used] = [0, 0, 0, 0];
  band.push(samples, (wide, narrow) => {
    const part = stream === 'wide' ? wide : narrow;
    for (let i = 0; i < part.count; i += 1) {
      seen += 1;
      if (seen < 0.2 * DURATION_S * rateHz) continue;
      const angle = (-2 * Math.PI * offHz * seen) / rateHz;
      re += part.re[i] * Math.cos(angle) - part.im[i] * Math.sin(angle);
      im += part.re[i] * Math.sin(angle) + part.im[i] * Math.cos(angle);
      used += 1;
    }
  });
  return 20 * Math.log10(Math.hypot(re, im) / used + 1e-12);
}

/** Tones whose positive or negative half folds onto an offset from the fork’s frequency, Hz; every image up to 20 kHz or so. */
function imagesOf(sampleRateHz: number, rateHz: number, offHz: number): number[] {
  const count = Math.floor(Math.min(sampleRateHz / 2, 20_000) / rateHz);
  return Array.from({ length: count }, (_, i) => (i + 1) * rateHz)
    .flatMap((image) => [FORK_HZ + offHz + image, image - FORK_HZ - offHz])
    .filter((hz) => hz > 20 && hz < 0.5 * sampleRateHz && Math.abs(hz - FORK_HZ) > 900);
}

describe.each([8000, 16_000, 22_050, 44_100, 48_000, 96_000, 192_000])('the demodulator at %d Hz', (rate) => {
  const { wideRateHz, narrowRateHz } = new QuadratureDemodulator(rate, FORK_HZ);

  it('leaves about 1200 and 100 values a second', () => {
    expect(Math.abs(wideRateHz / 1200 - 1)).toBeLessThan(0.06);
    expect(narrowRateHz).toBeCloseTo(wideRateHz / 12, 9);
  });

  it('keeps a tone at the fork’s frequency as it is, to 0.01 dB, and one 300 Hz beside it to 0.25 dB', () => {
    expect(Math.abs(leftDb(rate, FORK_HZ, 'wide', 0))).toBeLessThan(0.01);
    expect(Math.abs(leftDb(rate, FORK_HZ, 'narrow', 0))).toBeLessThan(0.01);
    // By hand: three moving averages over d values, (sin πx / d sin (πx/d))³ with x = 300 / 4800, are −0.17 dB.
    expect(Math.abs(leftDb(rate, FORK_HZ + 300, 'wide', 300))).toBeLessThan(0.25);
  });

  it('lets nothing through that would fold onto what is read: 65 dB down at least', () => {
    const worst = [-300, -200, -100, -20, 0, 20, 100, 200, 300].map((offHz) =>
      Math.max(...imagesOf(rate, wideRateHz, offHz).map((hz) => leftDb(rate, hz, 'wide', offHz))),
    );
    expect(Math.max(...worst)).toBeLessThan(-65);
  });
});
