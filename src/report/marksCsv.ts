import type { Experiment, Fork } from '../notebook/experiment.ts';
import type { Mark } from '../marks/mark.ts';
import { toCsv } from './csv.ts';
import type { Cell } from './csv.ts';

/** Columns that the solver's command reads, in its names, then readable ones. Units stand in the names. */
export const MARKS_CSV_HEADER = [
  'fork_hz',
  'ends',
  'length_cm',
  'diameter_mm',
  'temperature_c',
  'humidity_pct',
  'pressure_hpa',
  'place',
  'order',
  'length_uncertainty_mm',
  'fork_uncertainty_hz',
  'excluded',
  'other_length_cm',
  'rise_db',
  'above_room_db',
  'confidence',
  'made_at',
  'note',
] as const;

/** The pitch that counts in the fit, with its standard uncertainty: as measured, else as stamped. */
export function forkInUse(fork: Fork): { readonly hz: number; readonly standardUncertaintyHz: number } {
  return fork.measuredHz === null || fork.measuredStandardUncertaintyHz === null
    ? { hz: fork.nominalHz, standardUncertaintyHz: fork.standardUncertaintyHz }
    : { hz: fork.measuredHz, standardUncertaintyHz: fork.measuredStandardUncertaintyHz };
}

/** A mark whose length was read. */
export type MeasuredMark = Mark & { readonly lengthM: number };

/** Marks with a length that is above 0 once the zero offset is off. */
export function measuredMarks(experiment: Experiment): readonly MeasuredMark[] {
  return experiment.marks.filter(
    (mark): mark is MeasuredMark => mark.lengthM !== null && mark.lengthM > experiment.rule.zeroOffsetM,
  );
}

/**
 * The marks that have a length as CSV (RFC 4180); those left out of the fit say so. Lengths are in full precision with the rule's zero offset taken
 * off, so that the file gives the same speed when it is solved again.
 */
export function marksCsv(experiment: Experiment): string {
  const { tube, rule } = experiment;
  const rows = measuredMarks(experiment).map((mark): readonly Cell[] => {
    const fork = experiment.forks.find((candidate) => candidate.id === mark.forkId);
    const place = experiment.places.find((candidate) => candidate.id === mark.placeId);
    if (fork === undefined || place === undefined)
      throw new RangeError(`mark ${mark.id} has no fork or place`);
    const pitch = forkInUse(fork);
    return [
      pitch.hz,
      mark.ends,
      (mark.lengthM - rule.zeroOffsetM) * 100,
      tube.diameterM === null ? null : tube.diameterM * 1000,
      place.temperatureC,
      place.humidityPct,
      place.pressurePa === null ? null : place.pressurePa / 100,
      placeLabel(experiment, place.id),
      mark.order,
      rule.readingStandardUncertaintyM * 1000,
      pitch.standardUncertaintyHz,
      mark.excluded ? 'yes' : 'no',
      mark.otherLengthM === null ? null : (mark.otherLengthM - rule.zeroOffsetM) * 100,
      mark.evidence?.riseDb ?? null,
      mark.evidence?.aboveRoomDb ?? null,
      mark.evidence?.confidence ?? null,
      mark.createdAt,
      mark.note,
    ];
  });
  return toCsv([[...MARKS_CSV_HEADER], ...rows]);
}

/** A place's name; with its number where another place has the same name, so that the two stay apart. */
export function placeLabel(experiment: Experiment, placeId: string): string {
  const index = experiment.places.findIndex((place) => place.id === placeId);
  const name = experiment.places[index]?.name.trim() ?? '';
  const isShared = experiment.places.filter((place) => place.name.trim() === name).length > 1;
  return name === '' || isShared ? `${name} ${index + 1}`.trim() : name;
}
