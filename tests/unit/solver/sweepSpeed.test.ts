import { describe, expect, it } from 'vitest';
import { endCorrection } from '../../../src/air/endCorrection.ts';
import { sweepSpeed } from '../../../src/solver/sweepSpeed.ts';

const at = (frequencyHz: number) => ({ frequencyHz, standardUncertaintyHz: 0.2 });
const column = { lengthM: 0.672, lengthStandardUncertaintyM: 0.0005, radiusM: null, air: null } as const;

describe('sweepSpeed', () => {
  // By hand: a = 15 mm, e = 0.6133·a at low pitch (Levine & Schwinger 1948); walls' slowing at 20 °C from the references
  // (Zwikker–Kosten, computed): −2.298, −1.628, −1.153 m/s at 256, 512, 1024 Hz.
  const radiusM = 0.015;
  const slowing = new Map([
    [256, 2.298],
    [512, 1.628],
    [1024, 1.153],
  ]);

  it.each([...slowing])('takes the walls’ slowing off at %i Hz', (frequencyHz, lessMps) => {
    const { endCorrectionM } = endCorrection(radiusM, frequencyHz, 343);
    const freeMps = 343.5;
    const lengthM = (freeMps - lessMps) / (4 * frequencyHz) - endCorrectionM;
    const found = sweepSpeed(
      { ends: 'closed', lengthM, lengthStandardUncertaintyM: 0.0005, radiusM, air: null },
      [at(frequencyHz)],
    );
    expect(found?.speedMps).toBeCloseTo(freeMps, 1);
  });

  it('numbers odd and even multiples, and leaves out what is none', () => {
    const closed = sweepSpeed({ ...column, ends: 'closed' }, [125.9, 377.6, 629.3, 500].map(at));
    expect(closed?.resonances.map((one) => one.order)).toEqual([1, 2, 3]);
    expect(closed?.leftOut.map((one) => one.frequencyHz)).toEqual([500]);
    const open = sweepSpeed({ ...column, ends: 'open' }, [247.7, 495.4, 743.1].map(at));
    expect(open?.resonances.map((one) => one.order)).toEqual([1, 2, 3]);
  });

  it('never gets below what length and end correction leave uncertain, however many resonances', () => {
    const many = [1, 2, 3, 4, 5].map((n) => at((2 * n - 1) * 125.9));
    const found = sweepSpeed({ ...column, ends: 'closed', radiusM: 0.0175 }, many);
    // (u(L)² + (0.05 a)²)^½ / (L + e) · c
    const common = (343 * Math.hypot(0.0005, 0.05 * 0.0175)) / (0.672 + 0.0107);
    expect(found?.standardUncertaintyMps).toBeGreaterThan(0.95 * common);
  });

  it('gives null where nothing fits, and names a bad length', () => {
    expect(sweepSpeed({ ...column, ends: 'closed' }, [])).toBeNull();
    expect(() => sweepSpeed({ ...column, ends: 'closed', lengthM: 0 }, [at(128)])).toThrow(
      /lengthM must be > 0, got 0/,
    );
  });
});
