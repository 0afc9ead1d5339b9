import { airFromReadings } from '../../air/airState.ts';
import { speedOfSound } from '../../air/speedOfSound.ts';
import type { Plot } from './plot.ts';

/** Straight pieces of the band; over 20 °C it bends by less than the width of its line. */
const PIECES = 30;

/** Theory over temperature: a band from dry to saturated air at standard pressure, and its middle. @param degreesC  of the data, or their least and greatest */
export function theoryBand(degreesC: readonly number[]): Pick<Plot, 'lines' | 'bands'> {
  const low = Math.min(...degreesC, 10) - 2;
  const high = Math.max(...degreesC, 30) + 2;
  const band = Array.from({ length: PIECES + 1 }, (_, index) => {
    const temperatureC = low + ((high - low) * index) / PIECES;
    const at = (humidityPct: number): number =>
      speedOfSound(airFromReadings({ temperatureC, humidityPct })).speedMps;
    return { x: temperatureC, low: at(0), high: at(100) };
  });
  const middle = band.map((point) => ({ x: point.x, y: (point.low + point.high) / 2 }));
  return { lines: [{ points: middle, dash: '6 4', colour: 'room' }], bands: [{ points: band }] };
}
