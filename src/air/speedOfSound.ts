import type { AirState } from './airState.ts';
import { gasOf, IDEAL_GAS_UNCERTAINTY, speedInGasMps } from './gases.ts';
import { waterMoleFraction } from './waterMoleFraction.ts';

/** A speed with its standard uncertainty, and how much each quantity of the air adds to that. */
export interface TheoreticalSpeed {
  readonly speedMps: number;
  readonly standardUncertaintyMps: number;
  /** Slopes: m/s per kelvin, per % of humidity, per pascal, per unit of CO₂ mole fraction. */
  readonly perKelvin: number;
  readonly perHumidityPct: number;
  readonly perPascal: number;
  readonly perCo2: number;
  /** False where the formula is used outside of 0..30 °C, 75..102 kPa or its moisture. */
  readonly withinValidity: boolean;
}

/** Standard uncertainty of the formula itself, relative: Cramer states 300 ppm. */
const FORMULA_UNCERTAINTY = 300e-6;
/** The same beyond its stated range; a judgement, the polynomial bends away slowly. */
const EXTRAPOLATED_UNCERTAINTY = 1000e-6;
/** Of carbon dioxide beyond 1 %, relative to the speed and per unit of mole fraction: ideal mixing differs by so much. */
const CO2_UNCERTAINTY = 0.05;
/** Highest mole fraction of carbon dioxide that the formula is stated for. */
const STATED_CO2 = 0.01;

/**
 * Speed of sound in moist air, zero-frequency polynomial.
 * @param temperatureC  degrees Celsius
 * @param water  mole fraction of water vapour, 0..0.06
 * @param pressurePa  75 000..102 000
 * @param co2  mole fraction of carbon dioxide, 0..0.01
 * @returns m/s, within 300 ppm for 0..30 °C
 * @see Cramer 1993, J. Acoust. Soc. Am. 93, 2510, eq. 15 and table III
 * @example
 * cramerSpeedMps(20, 0, 101_325, 0.0004) // → 343.35947
 */
export function cramerSpeedMps(temperatureC: number, water: number, pressurePa: number, co2: number): number {
  const t = temperatureC;
  const p = pressurePa;
  return (
    331.5024 +
    0.603055 * t -
    0.000528 * t * t +
    (51.471935 + 0.1495874 * t - 0.000782 * t * t) * water +
    (-1.82e-7 + 3.73e-8 * t - 2.93e-10 * t * t) * p +
    (-85.20931 - 0.228525 * t + 5.91e-5 * t * t) * co2 -
    2.835149 * water * water -
    2.15e-13 * p * p +
    29.179762 * co2 * co2 +
    0.000486 * water * p * co2
  );
}

/**
 * Speed of sound that theory gives for air, or for the gas that fills the tube, with the uncertainty that comes from the
 * readings and the formula.
 * @param air  temperature -60..100 °C, humidity 0..100 %, pressure 20..120 kPa
 * @throws RangeError outside of those ranges
 * @see Cramer 1993 for air, √(γRT/M) for other gases; JCGM 100:2008, 5.1.2 for the combination
 * @example
 * speedOfSound(airFromReadings({ temperatureC: 23, humidityPct: 50 })).speedMps // → 345.8665
 */
export function speedOfSound(air: AirState): TheoreticalSpeed {
  if (air.filling !== 'air') return speedInFilling(air, air.filling);
  const at = (temperatureC: number, humidityPct: number, pressurePa: number, co2: number): number =>
    cramerSpeedMps(temperatureC, waterMoleFraction(temperatureC, humidityPct, pressurePa), pressurePa, co2);
  const { temperatureC: t, humidityPct: h, pressurePa: p, co2MoleFraction: x } = air;
  const speedMps = at(t, h, p, x);

  // One-sided in humidity, which must stay within 0..100 %; the speed is all but linear in it.
  const humidityStep = h > 50 ? -1 : 1;
  const perKelvin = (at(t + 0.05, h, p, x) - at(t - 0.05, h, p, x)) / 0.1;
  const perHumidityPct = (at(t, h + humidityStep, p, x) - speedMps) / humidityStep;
  const pressureStep = p > 70_000 ? -50 : 50;
  const perPascal = (at(t, h, p + pressureStep, x) - speedMps) / pressureStep;
  const perCo2 = (at(t, h, p, x + 1e-5) - speedMps) / 1e-5;

  const water = waterMoleFraction(t, h, p);
  const withinValidity =
    t >= 0 && t <= 30 && p >= 75_000 && p <= 102_000 && water <= 0.06 && x >= 0 && x <= STATED_CO2;
  const formula = (withinValidity ? FORMULA_UNCERTAINTY : EXTRAPOLATED_UNCERTAINTY) * speedMps;
  const standardUncertaintyMps = Math.hypot(
    perKelvin * air.temperatureStandardUncertaintyC,
    perHumidityPct * air.humidityStandardUncertaintyPct,
    perPascal * air.pressureStandardUncertaintyPa,
    perCo2 * air.co2StandardUncertainty,
    formula,
    x > STATED_CO2 ? CO2_UNCERTAINTY * x * speedMps : 0,
  );
  return { speedMps, standardUncertaintyMps, perKelvin, perHumidityPct, perPascal, perCo2, withinValidity };
}

/** Of a pure gas only the temperature counts. */
function speedInFilling(air: AirState, filling: Exclude<AirState['filling'], 'air'>): TheoreticalSpeed {
  const { temperatureC, temperatureStandardUncertaintyC } = air;
  const speedMps = speedInGasMps(gasOf(filling), temperatureC);
  const perKelvin = speedMps / (2 * (temperatureC + 273.15));
  return {
    speedMps,
    standardUncertaintyMps: Math.hypot(
      perKelvin * temperatureStandardUncertaintyC,
      IDEAL_GAS_UNCERTAINTY * speedMps,
    ),
    perKelvin,
    perHumidityPct: 0,
    perPascal: 0,
    perCo2: 0,
    withinValidity: true,
  };
}
