import { airFromReadings } from '../air/airState.ts';
import { speedOfSound } from '../air/speedOfSound.ts';
import { fitYork } from '../numeric/fitYork.ts';
import { coverageFactor } from '../numeric/studentT.ts';
import { inWords, significant } from './wording.ts';

export interface TemperaturePoint {
  readonly temperatureC: number;
  readonly temperatureStandardUncertaintyC: number;
  readonly speedMps: number;
  readonly standardUncertaintyMps: number;
}

/** c² against absolute temperature, a straight line through the origin for an ideal gas. */
export interface TemperatureLine {
  /** m²/s² per kelvin. */
  readonly slope: number;
  readonly slopeStandardUncertainty: number;
  readonly speedAtZeroCelsiusMps: number;
  readonly speedAtZeroCelsiusStandardUncertaintyMps: number;
  /** The same from theory for half moist air over these temperatures. */
  readonly theorySlope: number;
  readonly theorySpeedAtZeroCelsiusMps: number;
  readonly chiSquared: number;
  readonly degreesOfFreedom: number;
  readonly statement: string;
}

/**
 * Line of c² against absolute temperature through results at several temperatures, both uncertain.
 * @param points  at least two different temperatures
 * @param commonRelativeUncertainty  of all speeds together, from a fork or a rule that all used
 * @returns null where there are too few temperatures for a line
 */
export function temperatureLine(
  points: readonly TemperaturePoint[],
  commonRelativeUncertainty = 0,
): TemperatureLine | null {
  const usable = points.filter(
    ({ speedMps, standardUncertaintyMps, temperatureC }) =>
      speedMps > 0 && standardUncertaintyMps > 0 && Number.isFinite(temperatureC),
  );
  const line = fitYork(
    usable.map((point) => ({
      x: point.temperatureC + 273.15,
      xStandardUncertainty: point.temperatureStandardUncertaintyC,
      y: point.speedMps ** 2,
      yStandardUncertainty: 2 * point.speedMps * point.standardUncertaintyMps,
    })),
  );
  if (line === null) return null;
  const squareAtZero = line.slope * 273.15 + line.intercept;
  if (!(squareAtZero > 0)) return null;
  const speedAtZeroCelsiusMps = Math.sqrt(squareAtZero);
  const variance =
    273.15 ** 2 * line.slopeStandardUncertainty ** 2 +
    line.interceptStandardUncertainty ** 2 +
    2 * 273.15 * line.covariance;
  const scatter =
    line.degreesOfFreedom > 0 ? Math.max(Math.sqrt(line.chiSquared / line.degreesOfFreedom), 1) : 1;
  const common = 2 * commonRelativeUncertainty;
  const slopeStandardUncertainty = Math.hypot(scatter * line.slopeStandardUncertainty, common * line.slope);
  const speedAtZeroCelsiusStandardUncertaintyMps =
    Math.hypot(scatter * Math.sqrt(Math.max(variance, 0)), common * squareAtZero) /
    (2 * speedAtZeroCelsiusMps);

  const temperatures = usable.map(({ temperatureC }) => temperatureC);
  const squareAt = (temperatureC: number): number =>
    speedOfSound(airFromReadings({ temperatureC, humidityPct: 50 })).speedMps ** 2;
  const [low, high] = [Math.min(...temperatures), Math.max(...temperatures)];
  const theorySlope = (squareAt(high) - squareAt(low)) / (high - low);
  const factor = line.degreesOfFreedom > 0 ? coverageFactor(line.degreesOfFreedom) : 2;
  const agrees = Math.abs(line.slope - theorySlope) <= factor * slopeStandardUncertainty;
  return {
    slope: line.slope,
    slopeStandardUncertainty,
    speedAtZeroCelsiusMps,
    speedAtZeroCelsiusStandardUncertaintyMps,
    theorySlope,
    theorySpeedAtZeroCelsiusMps: Math.sqrt(squareAt(0)),
    chiSquared: line.chiSquared,
    degreesOfFreedom: line.degreesOfFreedom,
    statement: `c² rises by ${inWords(line.slope, 0)} m²/s² per kelvin, ± ${significant(factor * slopeStandardUncertainty, 2)} (95 %); theory has ${inWords(theorySlope, 0)}, which ${agrees ? 'agrees' : 'does not agree'}. At 0 °C the line gives ${inWords(speedAtZeroCelsiusMps, 1)} m/s.`,
  };
}
