import { DEEPEST_JSON } from '../limits/sizes.ts';
import type { Experiment } from '../notebook/experiment.ts';
import { mendRecord } from '../notebook/mendRecord.ts';
import { migrateExperiment } from '../notebook/migrateExperiment.ts';
import { readExperiment } from '../notebook/readExperiment.ts';
import type { ExperimentReading } from '../notebook/readExperiment.ts';
import type { RecordFault } from '../notebook/recordFault.ts';
import { laterWords } from '../words/inUse.ts';
import { mendedNote } from '../words/mended.ts';
import { fieldFaultWords, recordFaultWords } from '../words/recordFaults.ts';
import type { Intake, IntakeFault } from './intakeTypes.ts';
import { jsonDepth } from './jsonDepth.ts';

type Fields = Readonly<Record<string, unknown>>;

/** Lists whose single items may be left out. */
const LISTS = ['marks', 'deletedMarks', 'forks', 'places'] as const;
const ITEM = new RegExp(`^(${LISTS.join('|')})\\[(\\d+)\\]`);
/** What a class's result calls itself, as public/schema/class.schema.json has it. */
const CLASS_SCHEMA = /^urn:air-column-bench:class:/;
/** A mark may name a fork that was left out for a fault of its own, and what is measured now may, too. */
const MOST_ROUNDS = 5;

/** Reads JSON text as an experiment. Where single items are faulty, the experiment without them is the good part. */
export function readExperimentText(name: string, text: string): Intake {
  const refuse = (message: string): Intake => ({
    name,
    content: null,
    faults: [{ row: null, column: null, message }],
    remarks: [],
  });
  if (jsonDepth(text, DEEPEST_JSON) > DEEPEST_JSON) {
    return refuse(laterWords.intakeFault.nested);
  }
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return refuse(laterWords.intakeFault.noJson(reason));
  }
  if (CLASS_SCHEMA.test(String((value as Fields | null)?.['$schema']))) {
    return refuse(laterWords.intakeFault.classResult);
  }
  const reading = readExperiment(value);
  if (reading.kind === 'experiment') {
    return { name, content: { kind: 'experiment', experiment: reading.experiment }, faults: [], remarks: [] };
  }
  const faults = reading.faults.map(located);
  const rest = goodPart(value, reading);
  return {
    name,
    content: rest === null ? null : { kind: 'experiment', experiment: rest },
    faults,
    remarks: [rest === null ? laterWords.intakeRemark.mendFile : laterWords.intakeRemark.goodPart],
  };
}

/** The field and what is said of it. */
function located(fault: RecordFault): IntakeFault {
  return 'path' in fault
    ? { row: null, column: fault.path, message: fieldFaultWords(fault) }
    : { row: null, column: null, message: recordFaultWords(fault) };
}

/** What of the experiment can be used: numbers brought into their limits, faulty items left out; null: nothing. */
function goodPart(value: unknown, first: ExperimentReading): Experiment | null {
  const migrated = migrateExperiment(value);
  if ('fault' in migrated) return null;
  let fields = migrated.record;
  let reading = first;
  for (let round = 0; round < MOST_ROUNDS && reading.kind === 'faults'; round += 1) {
    const mended = mendRecord(fields, reading.outside, mendedNote);
    const rest = mended === fields ? withoutFaulty(fields, reading.faults) : mended;
    if (rest === null) return null;
    fields = rest;
    reading = readExperiment(fields);
  }
  if (reading.kind === 'faults' || reading.experiment.marks.length === 0) return null;
  return reading.experiment;
}

/** The record without its faulty items; null where something else is wrong. */
function withoutFaulty(fields: Fields, faults: readonly RecordFault[]): Fields | null {
  const bad = new Map(LISTS.map((list) => [list as string, new Set<number>()]));
  const badMarks = new Set<string>();
  let isPresentGone = false;
  for (const fault of faults) {
    if (fault.code === 'dangling') {
      if (fault.markId === null) isPresentGone = true;
      else badMarks.add(fault.markId);
      continue;
    }
    const item = 'path' in fault ? ITEM.exec(fault.path) : null;
    if (item === null) return null;
    bad.get(item[1] ?? '')?.add(Number(item[2]));
  }
  let rest = fields;
  for (const list of LISTS) {
    const items = fields[list];
    if (!Array.isArray(items)) return null;
    const isMarks = list === 'marks' || list === 'deletedMarks';
    const kept = items.filter(
      (item: unknown, index) =>
        bad.get(list)?.has(index) !== true &&
        !(isMarks && badMarks.has(String((item as Fields | null)?.['id']))),
    );
    rest = { ...rest, [list]: kept };
  }
  return isPresentGone ? { ...rest, present: firstPresent(rest) } : rest;
}

/** The first fork and place that are left, in place of one that is gone. */
function firstPresent(fields: Fields): Fields {
  const ids = (list: string): unknown[] =>
    (fields[list] as unknown[]).map((item) => (item as Fields | null)?.['id']);
  const present = fields['present'] as Fields;
  const kept = (list: string, id: unknown): unknown => (ids(list).includes(id) ? id : ids(list)[0]);
  return {
    ...present,
    forkId: kept('forks', present['forkId']),
    placeId: kept('places', present['placeId']),
  };
}
