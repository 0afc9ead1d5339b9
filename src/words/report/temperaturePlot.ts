import { laterWords } from '../inUse.ts';
import { fixed } from '../numbers.ts';
import { listOfSome } from './listOfSome.ts';

/** The speed found at one place. */
export interface SpokenSpeed {
  readonly name: string;
  readonly temperatureC: number;
  readonly speedMps: number;
}

/** What the plot shows. @param isNamed  whether the picture has room for the places' names */
export function temperaturePlotWords(places: readonly SpokenSpeed[], isNamed: boolean): string {
  const said = laterWords.temperaturePlot;
  const list = listOfSome(
    places.map(({ name, temperatureC, speedMps }) =>
      said.place(name, fixed(speedMps, 1), fixed(temperatureC, 1)),
    ),
  );
  return [list === '' ? said.none : said.places(list), ...(isNamed ? [] : [said.nameless]), said.band].join(
    ' ',
  );
}
