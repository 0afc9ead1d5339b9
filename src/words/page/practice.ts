import type { PracticeReadings } from '../../session/hearing/practiceReadings.ts';
import { words } from '../inUse.ts';
import { fixed } from '../numbers.ts';

/** Shown where the practice bench's air doesn't say. */
const USUAL_HUMIDITY_PCT = 50;

/**
 * What the practice column's instruments read.
 * @param ownPlace  where that would be noted, if not at the present place
 */
export function instrumentWords(
  { temperatureC, humidityPct, diameterM }: PracticeReadings,
  ownPlace: string | null,
): string {
  const { instruments, instrumentsApart } = words.practice;
  const celsius = fixed(temperatureC, 1);
  const humidity = fixed(humidityPct ?? USUAL_HUMIDITY_PCT, 0);
  const diameter = millimetres(diameterM);
  return ownPlace === null
    ? instruments(celsius, humidity, diameter)
    : instrumentsApart(celsius, humidity, diameter, ownPlace);
}

/** That what is measured on the practice tube doesn't fit the experiment's. */
export function otherTubeWords(diameterM: number, practiceDiameterM: number): string {
  return words.practice.otherTube(millimetres(diameterM), millimetres(practiceDiameterM));
}

function millimetres(lengthM: number): string {
  return fixed(lengthM * 1000, 1);
}
