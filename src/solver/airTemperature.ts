import { USUAL_AIR } from '../air/airState.ts';
import { speedOfSound } from '../air/speedOfSound.ts';
import { LIMITS } from '../limits/limits.ts';
import type { KnownSpeed } from './knownSpeed.ts';

export interface AirTemperature {
  readonly temperatureC: number;
  readonly standardUncertaintyC: number;
}

/**
 * Temperature at which air has a measured speed of sound: Cramer's formula turned round.
 * @param humidityPct  0..100; null: half moist, with the uncertainty of not knowing
 * @param pressurePa  null: sea level
 * @returns null where no temperature that the bench takes has that speed
 * @example
 * airTemperature({ speedMps: 343.99, standardUncertaintyMps: 0.3 }, 50)?.temperatureC.toFixed(1) // → '20.0'
 */
export function airTemperature(
  speed: KnownSpeed,
  humidityPct: number | null = null,
  pressurePa: number | null = null,
): AirTemperature | null {
  const air = {
    ...USUAL_AIR,
    // Temperature is what is sought: it adds nothing of its own.
    temperatureStandardUncertaintyC: 0,
    humidityPct: humidityPct ?? USUAL_AIR.humidityPct,
    humidityStandardUncertaintyPct: humidityPct === null ? USUAL_AIR.humidityStandardUncertaintyPct : 5,
    pressurePa: pressurePa ?? USUAL_AIR.pressurePa,
  };
  const at = (temperatureC: number) => speedOfSound({ ...air, temperatureC });
  let low: number = LIMITS.temperatureC.lowest;
  let high: number = LIMITS.temperatureC.highest;
  if (!(speed.speedMps >= at(low).speedMps && speed.speedMps <= at(high).speedMps)) return null;
  for (let round = 0; round < 60; round += 1) {
    const middle = (low + high) / 2;
    if (at(middle).speedMps < speed.speedMps) low = middle;
    else high = middle;
  }
  const temperatureC = (low + high) / 2;
  const { perKelvin, standardUncertaintyMps } = at(temperatureC);
  return {
    temperatureC,
    standardUncertaintyC: Math.hypot(speed.standardUncertaintyMps, standardUncertaintyMps) / perKelvin,
  };
}
