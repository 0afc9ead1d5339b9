import type { Experiment } from '../../notebook/experiment.ts';
import { placeLabels } from '../../notebook/placeLabels.ts';
import { temperaturePlotWords } from '../../words/report/temperaturePlot.ts';
import { laterWords } from '../../words/inUse.ts';
import { MOST_LABELS } from './plot.ts';
import { solvedPlaces } from '../tables/placeSolution.ts';
import type { PlaceSolution } from '../tables/placeSolution.ts';
import type { Plot, PlotPoint } from './plot.ts';
import { theoryBand } from './theoryBand.ts';

/** The speed found at one place. */
export interface PlaceSpeed {
  readonly name: string;
  readonly temperatureC: number;
  readonly speedMps: number;
  readonly expandedUncertaintyMps: number;
}

/** The places that have both a speed and a temperature. */
export function placeSpeeds(experiment: Experiment, places: readonly PlaceSolution[]): readonly PlaceSpeed[] {
  const byId = new Map(experiment.places.map((place) => [place.id, place]));
  const labels = placeLabels(experiment);
  return solvedPlaces(places).flatMap(({ placeId, solution }): PlaceSpeed[] => {
    const place = byId.get(placeId);
    if (place === undefined || place.temperatureC === null) return [];
    return [
      {
        name: labels.get(placeId) ?? '',
        temperatureC: place.temperatureC,
        speedMps: solution.speedMps,
        expandedUncertaintyMps: solution.expandedUncertaintyMps,
      },
    ];
  });
}

/** Speed against temperature with theory between dry and saturated air as a band. */
export function temperaturePlot(places: readonly PlaceSpeed[]): Plot {
  const isNamed = places.length <= MOST_LABELS;
  return {
    title: laterWords.temperaturePlot.title,
    xLabel: laterWords.temperaturePlot.x,
    yLabel: laterWords.temperaturePlot.y,
    words: temperaturePlotWords(places, isNamed),
    points: places.map((place): PlotPoint => ({
      x: place.temperatureC,
      y: place.speedMps,
      yBar: place.expandedUncertaintyMps,
      shape: 'disc',
      colour: 'tone',
      label: isNamed ? place.name : null,
    })),
    ...theoryBand(places.map(({ temperatureC }) => temperatureC)),
    include: { x: [], y: [] },
  };
}
