import { columnM } from '../marks/columnOfMark.ts';
import { WRITTEN_COLUMNS } from '../marks/markColumns.ts';
import type { WrittenColumn } from '../marks/markColumns.ts';
import { isLengthDoubtful } from '../marks/parseLength.ts';
import { isHumidityDoubtful } from '../marks/parseQuantities.ts';
import type { Experiment } from '../notebook/experiment.ts';
import { forkInUse } from '../notebook/forkInUse.ts';
import { measuredMarks } from '../notebook/measuredMarks.ts';
import type { MeasuredMark } from '../notebook/measuredMarks.ts';
import { placeLabels } from '../notebook/placeLabels.ts';
import { toCsv, writeNumber } from './csv.ts';
import type { Cell } from './csv.ts';

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
      other_diameter_mm: tube.otherDiameterM === null ? null : tube.otherDiameterM * 1000,
      mouth: tube.mouth,
      gas: place.filling,
      temperature_c: place.temperatureC,
      temperature_uncertainty_c: place.temperatureC === null ? null : place.temperatureStandardUncertaintyC,
      humidity_pct: humidityCell(place.humidityPct),
      pressure_hpa: place.pressurePa === null ? null : place.pressurePa / 100,
      co2_ppm: place.co2MoleFraction === null ? null : place.co2MoleFraction * 1e6,
      place: labels.get(place.id) ?? '',
      order: mark.order,
      length_uncertainty_mm:
        rule.readingStandardUncertaintyM === null ? null : rule.readingStandardUncertaintyM * 1000,
      fork_uncertainty_hz: pitch.standardUncertaintyHz,
      fork_id: mark.forkId,
      excluded: mark.excluded ? 'yes' : 'no',
      other_length_cm:
        mark.otherLengthM === null ? null : lengthCell(columnM(mark.otherLengthM, rule.zeroOffsetM)),
      located_by: mark.locatedBy ?? null,
      rise_db: mark.evidence?.riseDb ?? null,
      above_room_db: mark.evidence?.aboveRoomDb ?? null,
      confidence: mark.evidence?.confidence ?? null,
      centre_uncertainty_half_widths: mark.evidence?.centre?.standardUncertaintyHalfWidths ?? null,
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
