import { describe, expect, it } from 'vitest';
import { airProperties } from '../../../src/air/airProperties.ts';
import {
  halfWaves,
  resonanceWidthM,
  resonantLengthM,
  ringUpTimeS,
} from '../../../src/air/columnResonance.ts';
import { endCorrection, endCorrectionRatio, reflectionSize } from '../../../src/air/endCorrection.ts';
import { wallLoss } from '../../../src/air/wallLoss.ts';
import { AIR_TOLERANCES } from './tolerances.ts';
import { WALL_SLOWINGS } from '../../support/zwikkerKosten.ts';

const within = (actual: number, expected: number, tolerance: number): void =>
  expect(Math.abs(actual - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(tolerance);

describe('Levine & Schwinger 1948, unflanged open end (their integrals, computed)', () => {
  it.each([
    [0.1, 0.995067, 0.611],
    [0.2, 0.980859, 0.6064],
    [0.3, 0.958677, 0.5996],
    [0.5, 0.896441, 0.5818],
    [1.0, 0.695102, 0.5274],
  ])('at ka = %s reflects %s and has e/a = %s', (z, reflection, ratio) => {
    within(reflectionSize(z), reflection, AIR_TOLERANCES.reflection);
    within(endCorrectionRatio(z), ratio, AIR_TOLERANCES.endRatio * ratio);
  });

  it('tends to 0.6133 a, and 0.8216 a with a flange (Nomura 1960; Norris & Sheng 1989)', () => {
    expect(endCorrectionRatio(0)).toBe(0.6133);
    expect(endCorrectionRatio(0, 'flanged')).toBe(0.8216);
  });

  it('is near the bench rule 0.3 d (common practice)', () => {
    within(endCorrection(0.02, 512, 343).endCorrectionM, 0.012, 0.0003);
  });
});

describe('Zwikker–Kosten, 20 °C (computed): v − c in m/s at 256, 512 and 1024 Hz', () => {
  it.each(WALL_SLOWINGS)('radius %s mm', (radiusMm, ...slowings) => {
    for (const [index, slowing] of slowings.entries()) {
      const { speedRatio } = wallLoss(radiusMm / 1000, 256 * 2 ** index, 20);
      within(343.37 * (speedRatio - 1), slowing, AIR_TOLERANCES.slowingMps);
    }
  });
});

describe('Keefe 1984', () => {
  it('has expansions for wide tubes that the exact form meets', () => {
    for (const [radiusM, frequencyHz] of [
      [0.006, 256],
      [0.015, 512],
      [0.025, 1024],
    ] as const) {
      const air = airProperties(26.85);
      const size = radiusM * Math.sqrt((2 * Math.PI * frequencyHz * air.densityKgPerM3) / air.viscosityPaS);
      const { speedRatio, attenuationNpPerM } = wallLoss(radiusM, frequencyHz, 26.85, 347);
      const keefe =
        ((2 * Math.PI * frequencyHz) / 347) * (1.045 / size + 1.08 / size ** 2 + 0.75 / size ** 3);
      within(1 / speedRatio - 1, 1.045 / size, AIR_TOLERANCES.keefe * (1.045 / size));
      within(attenuationNpPerM, keefe, AIR_TOLERANCES.keefe * keefe);
    }
  });

  it('slows by 1.618e-3/(a√f) at 20 °C in the wide limit (Kirchhoff 1868)', () => {
    const { speedRatio } = wallLoss(0.05, 4000, 20);
    within((1 - speedRatio) * 0.05 * Math.sqrt(4000), 1.618e-3, 0.005e-3);
  });

  it('is smooth where the series takes over from the recurrence', () => {
    const air = airProperties(20);
    const radiusAt = (size: number): number =>
      size * Math.sqrt(air.viscosityPaS / air.densityKgPerM3 / (2 * Math.PI * 512));
    const below = wallLoss(radiusAt(99.999), 512);
    const above = wallLoss(radiusAt(100.001), 512);
    within(above.speedRatio - below.speedRatio, 2e-7, 1e-7);
  });

  it('is the isothermal, viscous limit in a hair-thin tube: α = ω/v (Rayleigh 1896, from memory)', () => {
    const { speedRatio, attenuationNpPerM } = wallLoss(2e-5, 100, 20, 343);
    within((attenuationNpPerM * speedRatio * 343) / (2 * Math.PI * 100), 1, 0.01);
  });
});

describe('column', () => {
  it('closed at one end resonates at 0.672 m for 128 Hz, 344 m/s (OpenStax University Physics 1, 17.5, example)', () => {
    const lengthM = resonantLengthM({
      order: 1,
      ends: 'closed',
      speedMps: 344,
      frequencyHz: 128,
      endCorrectionM: 0,
    });
    within(lengthM, 0.672, 0.0005);
  });

  it('of 4 cm resonates at 15.2 cm for 512 Hz, 336 m/s, e = 0.3 d (common exercise, no source)', () => {
    const column = {
      order: 1,
      ends: 'closed',
      speedMps: 336,
      frequencyHz: 512,
      endCorrectionM: 0.012,
    } as const;
    within(resonantLengthM(column), 0.152, 0.0005);
  });

  it('open at both ends takes off both corrections, which may differ', () => {
    const column = { order: 2, ends: 'open', speedMps: 340, frequencyHz: 340, endCorrectionM: 0.01 } as const;
    within(resonantLengthM(column), 0.98, 1e-12);
    within(resonantLengthM({ ...column, otherEndCorrectionM: 0.012 }), 0.978, 1e-12);
  });

  it.each([
    [1, 0.1565, 0.0027],
    [2, 0.49, 0.0054],
    [3, 0.825, 0.0082],
  ])('of 35 mm is as wide as computed at 512 Hz, order %s', (_order, lengthM, widthM) => {
    const { attenuationNpPerM } = wallLoss(0.0175, 512, 20);
    const column = { lengthM, ends: 'closed', radiusM: 0.0175, frequencyHz: 512, speedMps: 342 } as const;
    within(resonanceWidthM({ ...column, attenuationNpPerM }), widthM, AIR_TOLERANCES.widthM);
    // "Tens of ms".
    const ringUpS = ringUpTimeS({ ...column, attenuationNpPerM });
    expect(ringUpS).toBeGreaterThan(0.02);
    expect(ringUpS).toBeLessThan(0.1);
  });

  it('refuses an order that is no whole number', () => {
    expect(() => halfWaves(1.5, 'open')).toThrow('order must be 1, 2, 3…, got 1.5');
    expect(() => endCorrectionRatio(2)).toThrow('waveNumberTimesRadius must be 0..1.5, got 2');
    expect(() => wallLoss(0, 512)).toThrow('radiusM must be above 0, got 0');
  });
});
