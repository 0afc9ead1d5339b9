import type { Mark } from '../marks/mark.ts';
import type { MarkRow } from '../marks/marksTable.ts';
import type { Experiment } from '../notebook/experiment.ts';
import { newExperiment } from '../notebook/newExperiment.ts';
import type { IntakeFault } from './intakeTypes.ts';
import { RowForks } from './rowForks.ts';
import { RowPlaces } from './rowPlaces.ts';

/** What is needed from outside to make marks. */
export interface TakeOutside {
  newId(): string;
  /** Stands where a row doesn't say when it was made, ISO 8601. */
  readonly now: string;
}

export interface TakenRows {
  readonly experiment: Experiment;
  /** Rows that don't belong into one experiment with the others. */
  readonly faults: readonly IntakeFault[];
  readonly remarks: readonly string[];
}

/** An experiment's record holds orders up to this, and lists of this many. */
const HIGHEST_ORDER = 100;
const MOST_MARKS = 5000;
/** Tubes that differ by less are the same one, m. */
const SAME_DIAMETER_M = 1e-6;

/** A new experiment out of a table's rows. @param rows  at least one */
export function experimentFromRows(title: string, rows: readonly MarkRow[], outside: TakeOutside): TakenRows {
  const fresh = newExperiment(outside.newId(), outside.now);
  const taken = takeRows({ ...fresh, title, forks: [], places: [] }, rows, outside);
  const { forks, places } = taken.experiment;
  // Where every row was at fault the usual fork and place stay.
  const whole = {
    ...taken.experiment,
    forks: forks.length > 0 ? forks : fresh.forks,
    places: places.length > 0 ? places : fresh.places,
  };
  const present = {
    forkId: whole.forks.at(0)?.id ?? '',
    placeId: whole.places.at(0)?.id ?? '',
    ends: whole.marks.at(0)?.ends ?? fresh.present.ends,
  };
  const widths = rows.flatMap((row) => (row.lengthUncertaintyM === null ? [] : [row.lengthUncertaintyM]));
  const readingM = Math.max(0, ...widths) || fresh.rule.readingStandardUncertaintyM;
  const remarks =
    new Set(widths).size > 1
      ? [`The lengths state different uncertainties: the largest, ${readingM * 1000} mm, is taken for all.`]
      : [];
  return {
    experiment: { ...whole, present, rule: { ...whole.rule, readingStandardUncertaintyM: readingM } },
    faults: taken.faults,
    remarks: [...taken.remarks, ...remarks],
  };
}

/**
 * The experiment with a table's rows as further marks. Lengths in a table have the zero offset taken off; the
 * experiment's own is put back. Forks and places that are not there yet are added.
 */
export function takeRows(base: Experiment, rows: readonly MarkRow[], outside: TakeOutside): TakenRows {
  const faults: IntakeFault[] = [];
  const forks = new RowForks(base.forks);
  const places = new RowPlaces(base);
  const marks: Mark[] = [];
  let diameterM = base.tube.diameterM;
  const offsetM = base.rule.zeroOffsetM;
  const marksBefore = base.marks.length + base.deletedMarks.length;
  for (const row of rows) {
    const count = Math.max(marksBefore + marks.length, forks.all.length, places.all.length);
    const fault = misfit(row, diameterM, count);
    if (fault !== null) {
      faults.push(fault);
      continue;
    }
    diameterM ??= row.diameterM;
    marks.push({
      id: outside.newId(),
      createdAt: isTime(row.madeAt) ? row.madeAt : outside.now,
      forkId: forks.of(row).id,
      placeId: places.of(row).id,
      ends: row.ends,
      lengthM: row.lengthM + offsetM,
      otherLengthM: row.otherLengthM === null ? null : row.otherLengthM + offsetM,
      evidence: null,
      order: row.order,
      excluded: row.excluded,
      note: row.note,
    });
  }
  const remarks =
    offsetM === 0
      ? []
      : [
          `The table’s lengths are taken as columns’: the rule’s zero offset of ${offsetM * 1000} mm is put back.`,
        ];
  return {
    experiment: {
      ...base,
      forks: forks.all,
      places: places.all,
      tube: { ...base.tube, diameterM },
      marks: [...base.marks, ...marks],
    },
    faults,
    remarks,
  };
}

function misfit(row: MarkRow, diameterM: number | null, count: number): IntakeFault | null {
  if (count >= MOST_MARKS) {
    return {
      row: row.row,
      column: null,
      message: `an experiment holds ${MOST_MARKS} marks, forks or places at most.`,
    };
  }
  if (row.order !== null && row.order > HIGHEST_ORDER) {
    return { row: row.row, column: 'order', message: `an order of ${row.order} is above ${HIGHEST_ORDER}.` };
  }
  if (row.diameterM !== null && diameterM !== null && Math.abs(row.diameterM - diameterM) > SAME_DIAMETER_M) {
    const message = `this tube is ${row.diameterM * 1000} mm wide, the experiment’s is ${diameterM * 1000} mm. Another tube is another experiment.`;
    return { row: row.row, column: 'diameter_mm', message };
  }
  return null;
}

function isTime(text: string): boolean {
  return text.length <= 50 && Number.isFinite(Date.parse(text));
}
