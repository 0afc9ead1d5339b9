import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { besselRatio, twiceI1K1 } from '../../support/column/besselIntegrals.ts';
import { moistAir, pureGas } from '../../support/column/columnGas.ts';
import { fixedTables } from '../../support/column/fixedTables.ts';
import { FLANGE, resonances, THIN_RIM, thickRim } from '../../support/column/independentColumn.ts';
import { levineSchwinger } from '../../support/column/openEnd.ts';
import { phaseSpeedMps, tubeWave } from '../../support/column/tubeWave.ts';
import { WALL_SLOWINGS } from '../../support/zwikkerKosten.ts';

/*
 * The forward model that judges the solver, against published values. It imports nothing from `src`.
 */
const within = (actual: number, expected: number, tolerance: number): void =>
  expect(Math.abs(actual - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(tolerance);

const dry = (temperatureC: number) => moistAir({ temperatureC, humidityPct: 0, co2: 0.0004 });

describe('Bessel functions', () => {
  it('are those of the tables (Abramowitz & Stegun 1964, tables 9.1, 9.8 and 9.11)', () => {
    // J₁(1)/J₀(1) = 0.4400505857/0.7651976866; I₁(1)·K₁(1) = 0.5651591040·0.6019072302.
    within(besselRatio([1, 0])[0], 0.4400505857 / 0.7651976866, 1e-9);
    within(twiceI1K1(1), 2 * 0.565159104 * 0.6019072302, 1e-9);
  });

  it('go on smoothly where one way takes over from another', () => {
    for (const x of [2, 15]) within(twiceI1K1(x * 1.000001) / twiceI1K1(x * 0.999999), 1, 3e-6);
  });
});

describe('Levine & Schwinger 1948, integrals evaluated with another library (computed)', () => {
  const end = levineSchwinger();
  it.each([
    [0.1, 0.995067, 0.611],
    [0.2, 0.980859, 0.6064],
    [0.3, 0.958677, 0.5996],
    [0.5, 0.896441, 0.5818],
    [1.0, 0.695102, 0.5274],
  ])('at ka = %s: |R| %s, e/a %s', (ka, reflection, ratio) => {
    within(end(ka).reflection, reflection, 1e-6);
    within(end(ka).ratio, ratio, 5e-5);
  });

  it('begins at the 0.6133 that they printed, to a thousandth', () => {
    within(end(0).ratio, 0.6133, 0.0007);
  });
});

describe('mouths', () => {
  it('end at the thin rim and at the flange', () => {
    within(thickRim(1), THIN_RIM, 1e-9);
    expect(thickRim(0)).toBe(FLANGE);
  });
});

describe('Zwikker–Kosten, 20 °C (computed elsewhere with Keefe’s constants): v − c at 256, 512 and 1024 Hz', () => {
  it.each(WALL_SLOWINGS)('radius %s mm', (radiusMm, ...slowings) => {
    const gas = dry(20);
    for (const [i, slowing] of slowings.entries()) {
      const slowed = phaseSpeedMps(gas, radiusMm / 1000, 256 * 2 ** i) - gas.speedMps;
      // Viscosity and conductivity of other authors: 0.25 % at most.
      within(slowed, slowing, 0.0025 * Math.abs(slowing));
    }
  });

  it('damps by 3e-5·√f/a (Fletcher & Rossing 1998, ch. 8)', () => {
    const [attenuation] = tubeWave(dry(20), 0.0175, 512).propagation;
    within(attenuation, (3e-5 * Math.sqrt(512)) / 0.0175, 0.03 * attenuation);
  });
});

describe('air', () => {
  it.each([
    [0, 331.44767, 331.60354, 331.75936],
    [10, 337.45934, 337.78107, 338.1026],
    [20, 343.35947, 343.98673, 344.61323],
    [30, 349.14806, 350.30973, 351.46888],
  ])('at %s °C is as fast as Cramer 1993 says, dry, half moist and saturated', (temperatureC, ...speeds) => {
    for (const [i, speed] of speeds.entries()) {
      // His formula is good to 300 ppm, 0.1 m/s.
      within(moistAir({ temperatureC, humidityPct: 50 * i, co2: 0.0004 }).speedMps, speed, 0.08);
    }
  });

  it('has the density, viscosity and Prandtl number of Keefe 1984 at 26.85 °C', () => {
    const gas = dry(26.85);
    within(gas.densityKgPerM3, 1.1769, 0.0005);
    within(gas.viscosityPaS, 1.846e-5, 0.002e-5);
    within(Math.sqrt(gas.prandtl), 0.841, 0.001);
  });

  it('loses 0.089 m/s for each 1000 ppm of CO₂ (Cramer 1993), and a fifth of that as its molecules swing', () => {
    const more = moistAir({ temperatureC: 20, humidityPct: 0, co2: 0.0014 });
    // By hand: mass −½·(44.01/28.96 − 1) = −0.260, Cp −½·0.95·(1/2.5 − 1/3.5) = −0.054, of 343.36 m/s and 1000 ppm.
    within(more.speedMps - dry(20).speedMps, -0.314e-3 * 343.36, 0.001);
  });
});

describe('other gases', () => {
  it('are as fast as handbooks say: helium 1007, argon 319 m/s at 20 °C, CO₂ 259 at 0 °C (from memory)', () => {
    within(pureGas('helium', 20).speedMps, 1007, 2);
    within(pureGas('argon', 20).speedMps, 319, 1);
    within(pureGas('carbon dioxide', 0).speedMps, 259, 2);
  });
});

describe('columns', () => {
  const find = resonances();
  const gas = dry(20);

  it('in a tube so wide that walls slow nothing and so low that the mouth is small are quarter waves', () => {
    const column = { gas, radiusM: 0.25, frequencyHz: 20, mouthRatio: 0, farRatio: 0 };
    const quarterM = gas.speedMps / 80;
    // Walls of this tube take 0.15 %, and its |R| a little more.
    for (const order of [1, 2, 3]) {
      within(
        (find({ ...column, ends: 'closed' }, order)?.lengthM ?? 0) / ((2 * order - 1) * quarterM),
        1,
        0.002,
      );
      within((find({ ...column, ends: 'open' }, order)?.lengthM ?? 0) / (2 * order * quarterM), 1, 0.002);
    }
  });

  it('are 0.672 m long for 128 Hz at 22.0 °C, mouth included (OpenStax College Physics 2e, 17.5, example)', () => {
    const column = { gas: dry(22), radiusM: 0.02, frequencyHz: 128, mouthRatio: THIN_RIM, farRatio: 0 };
    const lengthM = find({ ...column, ends: 'closed' }, 1)?.lengthM ?? 0;
    // The book knows no walls: they take 0.7 %.
    within(lengthM + THIN_RIM * 0.02, 0.672 * 0.993, 0.002);
  });

  it('give the radius’ share of the mouth as half of the common exercise 0.3 d (15.2 cm, d = 4 cm, 512 Hz, 336 m/s)', () => {
    const slow = { ...gas, speedMps: 336 };
    const column = { gas: slow, radiusM: 0.02, frequencyHz: 512, mouthRatio: 0.6, farRatio: 0 };
    within(find({ ...column, ends: 'closed' }, 1)?.lengthM ?? 0, 0.152, 0.001);
  });

  it('are as wide as [2αL + (ka)²/2]/k: 2.7, 5.4 and 8.2 mm at 512 Hz for a = 17.5 mm (computed)', () => {
    const column = { gas, radiusM: 0.0175, frequencyHz: 512, mouthRatio: THIN_RIM, farRatio: 0 };
    for (const [i, widthMm] of [2.7, 5.4, 8.2].entries()) {
      const { halfWidthM } = find({ ...column, ends: 'closed' }, i + 1) ?? { halfWidthM: 0 };
      // Half a unit of the printed digit, and 1 % because the form is one for small losses.
      within(2000 * halfWidthM, widthMm, 0.05 + 0.01 * widthMm);
    }
  });

  it('are shorter than nothing where the mouth is a quarter wave', () => {
    const column = { gas, radiusM: 0.03, frequencyHz: 2600, mouthRatio: 1.4, farRatio: 0 };
    expect(find({ ...column, ends: 'closed' }, 1)).toBeNull();
  });
});

describe('fixtures/impedance-columns.csv', () => {
  it('is what the forward model makes', () => {
    const kept = readFileSync(
      resolve(import.meta.dirname, '../../../fixtures/impedance-columns.csv'),
      'utf8',
    );
    expect(kept).toBe(fixedTables());
  });
});
