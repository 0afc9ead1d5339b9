import { describe, expect, it } from 'vitest';
import { LevelRoomCorrelation } from '../../../src/room/levelRoomCorrelation.ts';
import { RoomBaseline } from '../../../src/room/roomBaseline.ts';
import { addStrikes, toneInNoise } from '../../support/tones.ts';
import { hear, toneSeriesOf } from '../../support/hear.ts';

const SAMPLE_RATE_HZ = 8000;
const FORK_HZ = 512;

/** Room noise alone. */
const room = (durationS: number, noiseRms: number, seed: number): Float32Array =>
  toneInNoise(
    { sampleRateHz: SAMPLE_RATE_HZ, durationS, frequencyHz: FORK_HZ, amplitude: 0, noiseRms },
    seed,
  );

const meanDb = (values: readonly number[]): number => values.reduce((sum, v) => sum + v / values.length, 0);

describe('the room’s baseline', () => {
  it('is the noise power in the tone’s band: 4 s² B / fs, halved to a mean square', () => {
    const noiseRms = 0.002;
    const { points } = hear(room(20, noiseRms, 1), SAMPLE_RATE_HZ, FORK_HZ);
    const late = points.filter((point) => point.timeS > 8).map((point) => point.roomDb);
    // 20 values of 95.2 a second: B = 4.76 Hz. The level of a mean square m is 10 lg (m / ½).
    const expected = 10 * Math.log10((4 * noiseRms ** 2 * 4.76) / SAMPLE_RATE_HZ / 2 / 0.5);
    // A median of ten frames lies a little under the mean: 1 dB is granted.
    expect(Math.abs(meanDb(late) - expected)).toBeLessThan(1);
  });

  it('follows a step of 20 dB within a second, up and down', () => {
    const samples = room(24, 0.001, 2);
    for (let i = 8 * SAMPLE_RATE_HZ; i < 16 * SAMPLE_RATE_HZ; i += 1) samples[i] = 10 * samples[i];
    const { points } = hear(samples, SAMPLE_RATE_HZ, FORK_HZ);
    const between = (fromS: number, toS: number): number =>
      meanDb(points.filter(({ timeS }) => timeS > fromS && timeS < toS).map(({ roomDb }) => roomDb));
    const quiet = between(4, 7.8);
    const loud = between(11, 15.8);
    expect(Math.abs(loud - quiet - 20)).toBeLessThan(1);
    expect(Math.abs(between(9, 9.2) - loud)).toBeLessThan(1.5);
    expect(Math.abs(between(17, 17.2) - quiet)).toBeLessThan(1.5);
  });

  it('moves less than 0.5 dB when a fork 40 dB above it sounds', () => {
    const samples = room(20, 0.001, 3);
    const alone = hear(samples, SAMPLE_RATE_HZ, FORK_HZ).points;
    // 40 dB over 4 s² 4.76 / fs.
    const amplitude = 100 * Math.sqrt((4 * 0.001 ** 2 * 4.76) / SAMPLE_RATE_HZ);
    addStrikes(samples, SAMPLE_RATE_HZ, FORK_HZ + 0.2, [
      { strikeS: 8, amplitude, decayTimeS: 60, dampedS: 16 },
    ]);
    const { points } = hear(samples, SAMPLE_RATE_HZ, FORK_HZ);
    const sounding = points.filter((point) => point.timeS > 8.3 && point.timeS < 15.8);
    expect(sounding.length).toBeGreaterThan(130);
    expect(sounding.every((point) => point.toneDb !== null)).toBe(true);
    // Second by second against the same room without the fork; the strike's own click has a second to pass.
    for (let fromS = 9; fromS < 15.5; fromS += 1) {
      const mean = (of: readonly { timeS: number; roomDb: number }[]): number =>
        meanDb(of.filter(({ timeS }) => timeS > fromS && timeS <= fromS + 1).map(({ roomDb }) => roomDb));
      expect(Math.abs(mean(points) - mean(alone))).toBeLessThan(0.5);
    }
  });

  it('has no density before the first frame', () => {
    expect(new RoomBaseline(20).density).toBeNull();
  });
});

describe('level against room', () => {
  const correlationIn = (samples: Float32Array): number | null =>
    new LevelRoomCorrelation(toneSeriesOf(samples, SAMPLE_RATE_HZ, FORK_HZ)).correlation();

  const strikes = [2, 6, 10, 14].map((strikeS) => ({
    strikeS,
    amplitude: 0.05,
    decayTimeS: 8,
    dampedS: strikeS + 2,
  }));

  it('finds a room that knows nothing of the fork', () => {
    const samples = room(18, 0.003, 4);
    addStrikes(samples, SAMPLE_RATE_HZ, FORK_HZ, strikes);
    const value = correlationIn(samples);
    expect(Math.abs(value ?? NaN)).toBeLessThan(0.2);
  });

  it('finds a gain that turns the room down while the fork sounds', () => {
    const samples = room(18, 0.003, 4);
    addStrikes(samples, SAMPLE_RATE_HZ, FORK_HZ, strikes);
    let mean = 0.003;
    for (let i = 0; i < samples.length; i += 1) {
      const size = Math.abs(samples[i]);
      mean += (size > mean ? 1 / 240 : 1 / 4800) * (size - mean);
      samples[i] = (samples[i] * 0.05) / Math.max(mean, 0.002);
    }
    expect(correlationIn(samples)).toBeLessThan(-0.5);
  });

  it('is null for less than five seconds', () => {
    expect(correlationIn(room(3, 0.01, 5))).toBeNull();
  });
});
