import { fixed } from '../numbers.ts';
import { listOfSome } from './listOfSome.ts';

/** The speed found at one place. */
export interface SpokenSpeed {
  readonly name: string;
  readonly temperatureC: number;
  readonly speedMps: number;
}

export const temperaturePlotWords = {
  title: 'Speed of sound against temperature',
  x: 'air temperature, °C',
  y: 'speed of sound, m/s',
  /** @param isNamed  whether the picture has room for the places' names */
  shows: (places: readonly SpokenSpeed[], isNamed: boolean) => {
    const list = listOfSome(
      places.map(
        ({ name, temperatureC, speedMps }) =>
          `${name}: ${fixed(speedMps, 1)} m/s at ${fixed(temperatureC, 1)} °C`,
      ),
    );
    return `${list === '' ? 'No place with a temperature yet' : list}.${isNamed ? '' : ' So many points bear no names in the picture.'} The band is theory from dry to saturated air.`;
  },
} as const;
