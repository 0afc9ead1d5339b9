import type { MarkRow } from '../marks/markRow.ts';
import type { Experiment, Place } from '../notebook/experiment.ts';
import { newPlace } from '../notebook/newExperiment.ts';
import { placeLabel } from '../notebook/placeLabels.ts';
import { freeId } from './freeId.ts';

/** An experiment's places, with those that the rows of a table add. */
export class RowPlaces {
  readonly all: Place[];
  private readonly ids: Set<string>;
  private readonly byName = new Map<string, Place[]>();
  private readonly present: Place | null;

  constructor(experiment: Experiment) {
    this.all = [...experiment.places];
    this.ids = new Set(this.all.map(({ id }) => id));
    for (const place of this.all) this.note(placeLabel(experiment, place.id), place);
    this.present = this.all.find((place) => place.id === experiment.present.placeId) ?? null;
  }

  /** The place of a row's name whose air is what the row says; without a name the one at which is measured now. */
  of(row: MarkRow): Place {
    if (row.place === '' && this.present !== null && fits(row, this.present)) return this.present;
    const name = row.place === '' ? 'Lab' : row.place;
    const found = this.byName.get(name)?.find((place) => fits(row, place));
    if (found !== undefined) return found;
    const place: Place = {
      ...withUncertainty(newPlace(freeId('place', this.ids), name), row),
      temperatureC: row.temperatureC,
      humidityPct: row.humidityPct,
      pressurePa: row.pressurePa,
      filling: row.filling ?? 'air',
      co2MoleFraction: row.co2MoleFraction,
    };
    this.all.push(place);
    this.note(name, place);
    return place;
  }

  private note(name: string, place: Place): void {
    const there = this.byName.get(name);
    if (there === undefined) this.byName.set(name, [place]);
    else there.push(place);
  }
}

function withUncertainty(place: Place, { temperatureUncertaintyC }: MarkRow): Place {
  if (temperatureUncertaintyC === null) return place;
  return { ...place, temperatureStandardUncertaintyC: temperatureUncertaintyC };
}

/** Whether the row says nothing of the air that the place doesn't. */
function fits(row: MarkRow, place: Place): boolean {
  return (
    (row.temperatureC === null || row.temperatureC === place.temperatureC) &&
    (row.temperatureUncertaintyC === null ||
      row.temperatureUncertaintyC === place.temperatureStandardUncertaintyC) &&
    (row.filling === null || row.filling === place.filling) &&
    (row.co2MoleFraction === null || row.co2MoleFraction === place.co2MoleFraction) &&
    (row.humidityPct === null || row.humidityPct === place.humidityPct) &&
    (row.pressurePa === null || row.pressurePa === place.pressurePa)
  );
}
