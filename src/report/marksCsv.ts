import { LONGEST } from '../limits/longest.ts';
import { beginningOf } from '../limits/texts.ts';
import type { Experiment, Fork } from '../notebook/experiment.ts';
import { columnM, hasColumn } from '../marks/columnOfMark.ts';
import type { Mark } from '../marks/mark.ts';
import { WRITTEN_COLUMNS } from '../marks/markColumns.ts';
import type { WrittenColumn } from '../marks/markColumns.ts';
import { isLengthDoubtful } from '../marks/parseLength.ts';
import { isHumidityDoubtful } from '../marks/parseQuantities.ts';
import { toCsv, writeNumber } from './csv.ts';
import type { Cell } from './csv.ts';

/** The pitch that counts in the fit, with its standard uncertainty: as measured, else as stamped. */
export function forkInUse(fork: Fork): { readonly hz: number; readonly standardUncertaintyHz: number } {
  return fork.measuredHz === null || fork.measuredStandardUncertaintyHz === null
    ? { hz: fork.nominalHz, standardUncertaintyHz: fork.standardUncertaintyHz }
    : { hz: fork.measuredHz, standardUncertaintyHz: fork.measuredStandardUncertaintyHz };
}

/** A mark whose length was read. */
export type MeasuredMark = Mark & { readonly lengthM: number };

/** Marks with a length that leaves a column once the zero offset is off; what is kept never lacks one. */
export function measuredMarks(experiment: Experiment): readonly MeasuredMark[] {
  const { zeroOffsetM } = experiment.rule;
  return experiment.marks.filter(
    (mark): mark is MeasuredMark => mark.lengthM !== null && hasColumn(mark.lengthM, zeroOffsetM),
  );
}

/**
 * The marks that have a length as rows of a table, the heading first; those left out of the fit say so. Lengths are in
 * full precision with the rule's zero offset taken off, so that the table gives the same speed when it is solved again.
 */
export function marksRows(experiment: Experiment): readonly (readonly Cell[])[] {
  const cellsOf = cellsIn(experiment);
  const rows = measuredMarks(experiment).map((mark) => {
    const cells = cellsOf(mark);
    return WRITTEN_COLUMNS.map((column) => cells[column]);
  });
  return [WRITTEN_COLUMNS, ...rows];
}

/** The same as CSV (RFC 4180). */
export function marksCsv(experiment: Experiment): string {
  return toCsv(marksRows(experiment));
}

/** Writes marks of one experiment, whose forks and places are looked up once. */
function cellsIn(experiment: Experiment): (mark: MeasuredMark) => Readonly<Record<WrittenColumn, Cell>> {
  const { tube, rule } = experiment;
  const forks = new Map(experiment.forks.map((fork) => [fork.id, forkInUse(fork)]));
  const places = new Map(experiment.places.map((place) => [place.id, place]));
  const labels = placeLabels(experiment);
  return (mark) => {
    const pitch = forks.get(mark.forkId);
    const place = places.get(mark.placeId);
    if (pitch === undefined || place === undefined)
      throw new RangeError(`mark ${mark.id} has no fork or place`);
    return {
      fork_hz: pitch.hz,
      ends: mark.ends,
      length_cm: lengthCell(columnM(mark.lengthM, rule.zeroOffsetM)),
      diameter_mm: tube.diameterM === null ? null : tube.diameterM * 1000,
      temperature_c: place.temperatureC,
      humidity_pct: humidityCell(place.humidityPct),
      pressure_hpa: place.pressurePa === null ? null : place.pressurePa / 100,
      place: labels.get(place.id) ?? '',
      order: mark.order,
      length_uncertainty_mm: rule.readingStandardUncertaintyM * 1000,
      fork_uncertainty_hz: pitch.standardUncertaintyHz,
      excluded: mark.excluded ? 'yes' : 'no',
      other_length_cm:
        mark.otherLengthM === null ? null : lengthCell(columnM(mark.otherLengthM, rule.zeroOffsetM)),
      rise_db: mark.evidence?.riseDb ?? null,
      above_room_db: mark.evidence?.aboveRoomDb ?? null,
      confidence: mark.evidence?.confidence ?? null,
      made_at: mark.createdAt,
      note: mark.note,
    };
  };
}

/** Centimetres; with their unit where a plain number would be taken for metres. */
function lengthCell(lengthM: number): Cell {
  const centimetres = lengthM * 100;
  return isLengthDoubtful(lengthM) ? `${writeNumber(centimetres)} cm` : centimetres;
}

/** Per cent; with the sign where a plain number would be taken for a fraction. */
function humidityCell(humidityPct: number | null): Cell {
  if (humidityPct === null || !isHumidityDoubtful(humidityPct)) return humidityPct;
  return `${writeNumber(humidityPct)} %`;
}

/** A place's name; with its number where another place has the same name, so that the two stay apart. */
export function placeLabel(experiment: Experiment, placeId: string): string {
  const index = experiment.places.findIndex((place) => place.id === placeId);
  const name = experiment.places[index]?.name.trim() ?? '';
  const isShared = experiment.places.filter((place) => place.name.trim() === name).length > 1;
  return labelOf(name, index, isShared);
}

function labelOf(name: string, index: number, isShared: boolean): string {
  if (name !== '' && !isShared) return name;
  const number = ` ${index + 1}`;
  return `${beginningOf(name, LONGEST.name - number.length)}${number}`.trim();
}

/** The names of all places by their ids, as `placeLabel` gives them: for whoever needs many. */
export function placeLabels({ places }: Experiment): ReadonlyMap<string, string> {
  const names = places.map((place) => place.name.trim());
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  const labels = new Map<string, string>();
  for (const [index, { id }] of places.entries()) {
    const name = names[index] ?? '';
    if (!labels.has(id)) labels.set(id, labelOf(name, index, (counts.get(name) ?? 0) > 1));
  }
  return labels;
}
