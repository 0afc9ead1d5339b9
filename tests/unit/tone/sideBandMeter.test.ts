import { describe, expect, it } from 'vitest';
import { VALUES_PER_FRAME } from '../../../src/tone/sideBandNoise.ts';
import { toneSeriesOf } from '../../support/hear.ts';
import { toneInNoise } from '../../support/tones.ts';

const SAMPLE_RATE_HZ = 16_000;
const FORK_HZ = 512;
const NOISE_RMS = 0.001;
/** By hand: white noise of rms s has 4 s² / fs in the complex stream, whose tone of amplitude A is A². */
const NOISE_DENSITY = (4 * NOISE_RMS ** 2) / SAMPLE_RATE_HZ;
const DURATION_S = 6;

const noise = (): Float32Array =>
  toneInNoise(
    {
      sampleRateHz: SAMPLE_RATE_HZ,
      durationS: DURATION_S,
      frequencyHz: 100,
      amplitude: 0,
      noiseRms: NOISE_RMS,
    },
    5,
  );

/** Adds a line of amplitude 0.1 whose frequency is a function of time. */
function addLine(samples: Float32Array, fromS: number, lineHz: (timeS: number) => number): void {
  let phase = 0;
  for (let i = Math.round(fromS * SAMPLE_RATE_HZ); i < samples.length; i += 1) {
    samples[i] = samples[i] + 0.1 * Math.sin(phase);
    phase += (2 * Math.PI * lineHz(i / SAMPLE_RATE_HZ)) / SAMPLE_RATE_HZ;
  }
}

/** Mean near and far density between two times over the noise's own. */
function overNoise(samples: Float32Array, fromS: number, toS: number): { near: number; far: number } {
  const { sideBands, rateHz } = toneSeriesOf(samples, SAMPLE_RATE_HZ, FORK_HZ);
  const mean = (densities: Float64Array): number => {
    const between = densities.slice(
      Math.ceil((fromS * rateHz) / VALUES_PER_FRAME),
      Math.ceil((toS * rateHz) / VALUES_PER_FRAME),
    );
    return between.reduce((sum, value) => sum + value, 0) / between.length / NOISE_DENSITY;
  };
  return { near: mean(sideBands.near), far: mean(sideBands.far) };
}

describe('side bands of the fork’s frequency', () => {
  it('hold the noise’s own density where nothing else sounds', () => {
    const { near, far } = overNoise(noise(), 1, DURATION_S - 0.5);
    // 55 frames of 22 and 98 bins, half of them independent: 4 % and 2 % of scatter.
    expect(Math.abs(near - 1)).toBeLessThan(0.15);
    expect(Math.abs(far - 1)).toBeLessThan(0.08);
  });

  it.each([
    [460, 1e-4],
    [480, 0.01],
    [554, 0.001],
    [700, 1e-4],
  ])(
    'count another fork at %d Hz for no more than it does at the fork’s frequency, once it has stood for a second',
    (lineHz, share) => {
      const samples = noise();
      addLine(samples, 1, () => lineHz);
      const at = overNoise(samples, 1.3, 1.7);
      const later = overNoise(samples, 2.6, DURATION_S - 0.5);
      // By hand, 32 Hz away: the narrow filter lets 0.08 of the power through, a mean over 0.2 s 1 / (π 32 · 0.2)² = 0.0025 of
      // that; over 102 Hz of side bands against 5 Hz of mean that is 0.004 of what the line was counted for.
      expect(Math.max(at.near, at.far)).toBeGreaterThan(1000);
      expect(later.near).toBeLessThan(2 + share * at.near);
      expect(later.far).toBeLessThan(2);
    },
  );

  it('keep a voice’s line, which moves', () => {
    const samples = noise();
    addLine(samples, 1, (timeS) => 480 + 15 * Math.sin(2 * Math.PI * 0.8 * timeS));
    expect(overNoise(samples, 2.6, DURATION_S - 0.5).near).toBeGreaterThan(1000);
  });
});
