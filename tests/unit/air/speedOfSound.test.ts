import { describe, expect, it } from 'vitest';
import { airFromReadings, USUAL_AIR } from '../../../src/air/airState.ts';
import { saturationPressurePa } from '../../../src/air/saturationPressure.ts';
import { cramerSpeedMps, speedOfSound } from '../../../src/air/speedOfSound.ts';
import { waterMoleFraction } from '../../../src/air/waterMoleFraction.ts';
import { moistAir } from '../../support/column/columnGas.ts';
import { AIR_TOLERANCES } from './tolerances.ts';

const within = (actual: number, expected: number, tolerance: number): void =>
  expect(Math.abs(actual - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(tolerance);

describe('IEC 61094-2:2009, table F.1', () => {
  it('gives 345.86652 m/s at 23 °C, 101 325 Pa, 50 % and 400 ppm with the saturation pressure of Davis 1992', () => {
    const water = waterMoleFraction(23, 50, 101_325);
    within(cramerSpeedMps(23, water, 101_325, 0.0004), 345.86652, AIR_TOLERANCES.iecMps);
  });
});

/**
 * Mole fraction of water with the saturation pressure of Giacomo 1981, Metrologia 18, 33, as Cramer's appendix has it;
 * the bench takes that of Davis 1992.
 */
function waterAfterGiacomo(temperatureC: number, humidityPct: number, pressurePa: number): number {
  const kelvin = temperatureC + 273.15;
  const saturationPa = Math.exp(
    1.2811805e-5 * kelvin ** 2 - 1.9509874e-2 * kelvin + 34.04926034 - 6353.6311 / kelvin,
  );
  const enhancement = 1.00062 + 3.14e-8 * pressurePa + 5.6e-7 * temperatureC ** 2;
  return ((humidityPct / 100) * enhancement * saturationPa) / pressurePa;
}

describe('Cramer 1993, evaluated with an independent numerical library (computed)', () => {
  const table: [number, number, number, number][] = [
    [0, 331.44767, 331.60354, 331.75936],
    [10, 337.45934, 337.78107, 338.1026],
    [20, 343.35947, 343.98673, 344.61323],
    [30, 349.14806, 350.30973, 351.46888],
  ];
  it.each(table)(
    'gives the speed at %s °C for dry, half moist and saturated air',
    (temperatureC, ...speeds) => {
      for (const [index, speed] of speeds.entries()) {
        const water = waterAfterGiacomo(temperatureC, 50 * index, 101_325);
        within(cramerSpeedMps(temperatureC, water, 101_325, 0.0004), speed, AIR_TOLERANCES.cramerMps);
      }
    },
  );

  it('has the slopes +0.625 per K, +0.0125 per %, −0.0058 per kPa and −0.089 per 1000 ppm of CO₂ at 20 °C', () => {
    const slopes = speedOfSound({ ...USUAL_AIR, temperatureC: 20 });
    within(slopes.perKelvin, 0.625, 0.625 * AIR_TOLERANCES.slope);
    within(slopes.perHumidityPct, 0.0125, 0.0125 * AIR_TOLERANCES.slope);
    within(slopes.perPascal * 1000, -0.0058, 0.0058 * AIR_TOLERANCES.slope);
    within(slopes.perCo2 * 1e-3, -0.089, 0.089 * AIR_TOLERANCES.slope);
  });
});

describe('other forms', () => {
  it('agrees with ISO 9613-1, c = 343.2·√(T/293.15), for dry air', () => {
    for (const temperatureC of [0, 10, 20]) {
      const iso = 343.2 * Math.sqrt((temperatureC + 273.15) / 293.15);
      within(
        speedOfSound({ ...USUAL_AIR, temperatureC, humidityPct: 0 }).speedMps,
        iso,
        AIR_TOLERANCES.ideal,
      );
    }
  });

  it.each([5, 15, 25])(
    'agrees at %s °C and any moisture with the handbook’s speed, √T and an ideal mixture’s γ/M (Bohn 1988)',
    (temperatureC) => {
      for (const humidityPct of [0, 30, 60, 90]) {
        const { speedMps } = speedOfSound({ ...USUAL_AIR, temperatureC, humidityPct });
        within(
          speedMps,
          moistAir({ temperatureC, humidityPct, co2: 0.0004 }).speedMps,
          AIR_TOLERANCES.mixture,
        );
      }
    },
  );

  it('gives the handbook value 331.45 m/s for dry air with 314 ppm of CO₂ at 0 °C', () => {
    within(cramerSpeedMps(0, 0, 101_325, 314e-6), 331.45, 0.006);
  });
});

describe('uncertainty', () => {
  it('adds half a kelvin, 5 %, 2 hPa, 300 ppm of CO₂ and the formula in squares', () => {
    const air = airFromReadings({ temperatureC: 20, humidityPct: 50, pressurePa: 101_325 });
    // √(0.3125² + 0.0627² + 0.0012² + 0.0267² + 0.1032²), slopes as above.
    within(speedOfSound(air).standardUncertaintyMps, 0.3364, 0.001);
  });

  it('is wider where humidity was not read and where the formula is stretched', () => {
    const read = speedOfSound(airFromReadings({ temperatureC: 20, humidityPct: 50 }));
    expect(speedOfSound(airFromReadings({ temperatureC: 20 })).standardUncertaintyMps).toBeGreaterThan(
      read.standardUncertaintyMps,
    );
    const cold = speedOfSound(airFromReadings({ temperatureC: -10 }));
    expect(cold.withinValidity).toBe(false);
    expect(cold.standardUncertaintyMps).toBeGreaterThan(0.33);
  });
});

describe('bad arguments', () => {
  it('are refused with their name, range and value', () => {
    expect(() => saturationPressurePa(293)).toThrow('temperatureC must be -60..100, got 293');
    expect(() => waterMoleFraction(20, 101, 101_325)).toThrow('humidityPct must be 0..100, got 101');
    expect(() => waterMoleFraction(20, 50, 1013)).toThrow('pressurePa must be 20000..120000, got 1013');
    expect(() => waterMoleFraction(Number.NaN, 50, 101_325)).toThrow('got NaN');
  });
});
