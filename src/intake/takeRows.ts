import type { MouthShape } from '../air/mouth.ts';
import { isWithin, LIMITS } from '../limits/limits.ts';
import { LONGEST } from '../limits/longest.ts';
import { LARGEST_RECORD_BYTES } from '../limits/sizes.ts';
import { beginningOf, wellFormed } from '../limits/texts.ts';
import { readingLimit, readingOfColumnM } from '../marks/columnOfMark.ts';
import type { Mark } from '../marks/mark.ts';
import type { MarkRow } from '../marks/markRow.ts';
import { readingTaken } from '../marks/readingTaken.ts';
import type { Experiment } from '../notebook/experiment.ts';
import { newExperiment } from '../notebook/newExperiment.ts';
import { itemBytes, recordBytes } from '../notebook/recordBytes.ts';
import { laterWords } from '../words/inUse.ts';
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

/** Tubes that differ by less are the same one, m. */
const SAME_DIAMETER_M = 1e-6;
const DIAMETERS = [
  ['diameterM', 'diameter_mm'],
  ['otherDiameterM', 'other_diameter_mm'],
] as const;

/** A new experiment out of a table's rows. @param rows  at least one */
export function experimentFromRows(title: string, rows: readonly MarkRow[], outside: TakeOutside): TakenRows {
  const fresh = newExperiment(outside.newId(), outside.now);
  const taken = takeRows({ ...fresh, title: titleOf(title), forks: [], places: [] }, rows, outside);
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
  const { readingM, remarks } = commonReading(rows);
  return {
    experiment: { ...whole, present, rule: { ...whole.rule, readingStandardUncertaintyM: readingM } },
    faults: taken.faults,
    remarks: [...taken.remarks, ...remarks],
  };
}

/** The reading that stands for all rows: the largest, as an experiment has one; none where no row states any. */
function commonReading(rows: readonly MarkRow[]) {
  if (rows.every(({ lengthUncertaintyM }) => lengthUncertaintyM === null))
    return { readingM: null, remarks: [] };
  const taken = rows.map((row) => readingTaken(row.lengthUncertaintyM, row.locatedBy));
  const widths = new Set(taken.map(({ lengthStandardUncertaintyM }) => lengthStandardUncertaintyM));
  const readingM = Math.max(...widths);
  return { readingM, remarks: widths.size > 1 ? [laterWords.intakeRemark.widestTaken(readingM)] : [] };
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
  let { diameterM, otherDiameterM, mouth } = base.tube;
  const offsetM = base.rule.zeroOffsetM;
  let bytes = recordBytes(base);
  for (const row of rows) {
    const count = Math.max(base.marks.length + marks.length, forks.all.length, places.all.length);
    const fault = misfit(row, { diameterM, otherDiameterM, mouth, count, offsetM });
    if (fault !== null) {
      faults.push(fault);
      continue;
    }
    const counts = [forks.all.length, places.all.length];
    const mark: Mark = {
      id: outside.newId(),
      createdAt: isTime(row.madeAt) ? row.madeAt : outside.now,
      forkId: forks.of(row).id,
      placeId: places.of(row).id,
      ends: row.ends,
      lengthM: readingOfColumnM(row.lengthM, offsetM),
      otherLengthM: row.otherLengthM === null ? null : readingOfColumnM(row.otherLengthM, offsetM),
      evidence: null,
      order: row.order,
      excluded: row.excluded,
      note: row.note,
      ...(row.locatedBy === null ? {} : { locatedBy: row.locatedBy }),
    };
    for (const item of [...forks.all.slice(counts[0]), ...places.all.slice(counts[1])])
      bytes += itemBytes(item);
    if (bytes + itemBytes(mark) > LARGEST_RECORD_BYTES) {
      const message = laterWords.intakeFault.recordFull(LARGEST_RECORD_BYTES);
      faults.push({ row: row.row, column: null, message });
      continue;
    }
    bytes += itemBytes(mark);
    diameterM ??= row.diameterM;
    otherDiameterM ??= row.otherDiameterM;
    mouth ??= row.mouth;
    marks.push(mark);
  }
  const remarks = offsetM === 0 ? [] : [laterWords.intakeRemark.offsetPutBack(offsetM)];
  return {
    experiment: {
      ...base,
      forks: forks.all,
      places: places.all,
      tube: { ...base.tube, diameterM, otherDiameterM, mouth },
      marks: [...base.marks, ...marks],
    },
    faults,
    remarks,
  };
}

/** What a row meets in the experiment that it comes into. */
interface Meeting {
  readonly diameterM: number | null;
  readonly otherDiameterM: number | null;
  readonly mouth: MouthShape | null;
  /** Of its longest list. */
  readonly count: number;
  readonly offsetM: number;
}

function misfit(row: MarkRow, meeting: Meeting): IntakeFault | null {
  const { mouth, count, offsetM } = meeting;
  if (count >= LONGEST.list) {
    const message = laterWords.intakeFault.listFull(LONGEST.list);
    return { row: row.row, column: null, message };
  }
  const noReading = rowReadingFault(row, offsetM);
  if (noReading !== null) return noReading;
  if (row.order !== null && !isWithin(LIMITS.order, row.order)) {
    const message = laterWords.intakeFault.badOrder(row.order, LIMITS.order);
    return { row: row.row, column: 'order', message };
  }
  for (const [field, column] of DIAMETERS) {
    const [theirsM, ownM] = [row[field], meeting[field]];
    if (theirsM === null || ownM === null || Math.abs(theirsM - ownM) <= SAME_DIAMETER_M) continue;
    return { row: row.row, column, message: laterWords.intakeFault.otherTube(theirsM, ownM) };
  }
  if (row.mouth !== null && mouth !== null && row.mouth !== mouth) {
    return { row: row.row, column: 'mouth', message: laterWords.intakeFault.otherMouth(row.mouth, mouth) };
  }
  return null;
}

/** A column that this experiment's rule shows no reading for. */
function rowReadingFault({ row, lengthM, otherLengthM }: MarkRow, offsetM: number): IntakeFault | null {
  const limit = readingLimit(offsetM);
  const isMissing = (columnM: number | null): boolean =>
    columnM !== null && !isWithin(limit, readingOfColumnM(columnM, offsetM));
  const column = isMissing(lengthM) ? 'length_cm' : isMissing(otherLengthM) ? 'other_length_cm' : null;
  if (column === null) return null;
  const found = column === 'length_cm' ? lengthM : (otherLengthM ?? lengthM);
  const message = laterWords.intakeFault.noReading(offsetM, found, LIMITS.lengthM);
  return { row, column, message };
}

/** Of a file's name. */
function titleOf(text: string): string {
  return beginningOf(wellFormed(text), LONGEST.title);
}

function isTime(text: string): boolean {
  return text.length <= LONGEST.time && Number.isFinite(Date.parse(text));
}
