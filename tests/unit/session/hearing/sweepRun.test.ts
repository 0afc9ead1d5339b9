import { describe, expect, it } from 'vitest';
import { airFromReadings } from '../../../../src/air/airState.ts';
import { ColumnModel } from '../../../../src/capture/practice/columnModel.ts';
import { PracticeSweep } from '../../../../src/capture/practice/practiceSweep.ts';
import { sweepDurationS } from '../../../../src/capture/sweepPlan.ts';
import { sweepResonances } from '../../../../src/resonance/sweep/sweepResonances.ts';
import { sweepSpeed } from '../../../../src/solver/sweepSpeed.ts';
import { SweepTrack } from '../../../../src/tone/sweepTrack.ts';
import { SeededRandom } from '../../../../src/capture/practice/seededRandom.ts';

const TOLERANCES = {
  /** Resonance against the model's own zero of the reactance, in stated standard uncertainties. */
  resonanceUncertainties: 3,
  /** Speed against the model's, relative: found to be below 2e-4 in the quiet. */
  speedPart: 1e-3,
} as const;

const AIR = { temperatureC: 21, humidityPct: 45 };
const RATE_HZ = 24_000;

function sweep(lengthM: number, ends: 'closed' | 'open', radiusM: number, noiseRms: number) {
  const plan = { fromHz: 250, toHz: 750, rateHzPerS: 12 };
  const column = { lengthM, ends, radiusM, air: AIR };
  const sound = new PracticeSweep({ ...plan, ...column, sampleRateHz: RATE_HZ }, 1);
  const track = new SweepTrack(RATE_HZ, plan.fromHz, plan.toHz);
  const random = new SeededRandom(7);
  for (let second = 0; second < sweepDurationS(plan) + 1; second += 1) {
    const samples = sound.render(RATE_HZ);
    for (let i = 0; i < samples.length; i += 1) samples[i] = (samples[i] ?? 0) + noiseRms * random.normal();
    track.push(samples);
  }
  return sweepResonances(track.frames, plan.rateHzPerS);
}

/** Where the column's reactance is zero near a pitch: its resonance. */
function trueHz(nearHz: number, lengthM: number, ends: 'closed' | 'open', radiusM: number): number {
  const reactance = (frequencyHz: number): number =>
    new ColumnModel({ frequencyHz, radiusM, ends, air: AIR }).impedance(lengthM).im;
  let [low, high] = [nearHz - 15, nearHz + 15];
  for (let round = 0; round < 50; round += 1) {
    const middle = (low + high) / 2;
    if (reactance(middle) * reactance(low) <= 0) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

describe.each([
  { lengthM: 0.6, ends: 'closed', radiusM: 0.0175, count: 2, noiseRms: 0 },
  { lengthM: 0.9, ends: 'closed', radiusM: 0.02, count: 3, noiseRms: 0.01 },
  { lengthM: 0.5, ends: 'open', radiusM: 0.0125, count: 2, noiseRms: 0.003 },
] as const)(
  'a sweep at $lengthM m, $ends, noise $noiseRms',
  ({ lengthM, ends, radiusM, count, noiseRms }) => {
    const { resonances } = sweep(lengthM, ends, radiusM, noiseRms);

    it('finds each resonance at the pitch of the column, within its uncertainty', () => {
      expect(resonances).toHaveLength(count);
      for (const { frequencyHz, standardUncertaintyHz } of resonances) {
        const off = frequencyHz - trueHz(frequencyHz, lengthM, ends, radiusM);
        expect(Math.abs(off)).toBeLessThan(TOLERANCES.resonanceUncertainties * standardUncertaintyHz);
        expect(standardUncertaintyHz).toBeLessThan(1);
      }
    });

    it('gives the speed in free air', () => {
      const column = {
        ends,
        lengthM,
        lengthStandardUncertaintyM: 0.0005,
        radiusM,
        air: airFromReadings(AIR),
      };
      const found = sweepSpeed(column, resonances);
      const { freeSpeedMps } = new ColumnModel({ frequencyHz: 500, radiusM, ends, air: AIR });
      expect(Math.abs((found?.speedMps ?? 0) / freeSpeedMps - 1)).toBeLessThan(TOLERANCES.speedPart);
      expect(Math.abs((found?.speedMps ?? 0) - freeSpeedMps)).toBeLessThan(
        found?.expandedUncertaintyMps ?? 0,
      );
    });
  },
);

describe('a sweep without a column', () => {
  it('finds nothing in noise alone', () => {
    const track = new SweepTrack(RATE_HZ, 250, 750);
    const random = new SeededRandom(3);
    track.push(Float32Array.from({ length: 20 * RATE_HZ }, () => 0.01 * random.normal()));
    expect(sweepResonances(track.frames, 12).resonances).toEqual([]);
  });
});
