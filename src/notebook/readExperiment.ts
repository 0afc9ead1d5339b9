import type { ColumnEnds, LevelStretch, Mark, MarkEvidence } from '../marks/mark.ts';
import { SCHEMA_VERSION } from './experiment.ts';
import type { Experiment, Fork, GainCheckRecord, Lesson, Place } from './experiment.ts';
import { migrateExperiment } from './migrateExperiment.ts';
import { RecordReader } from './recordReader.ts';

/** A record as understood, or everything that is wrong with it. */
export type ExperimentReading =
  | { readonly kind: 'experiment'; readonly experiment: Experiment }
  | { readonly kind: 'faults'; readonly faults: readonly string[] };

const ENDS: readonly ColumnEnds[] = ['closed', 'open'];
const SOURCES: readonly MarkEvidence['source'][] = ['microphone', 'recording', 'practice'];

/** Points of a kept trace: five minutes at 20 a second, far more than the bench keeps. */
const LONGEST_TRACE = 6000;

/** Far more than a class makes, and little enough that a hostile file can't stall the page. */
const LONGEST_LIST = 5000;

/** Items of lists that were found good, by the object they were read from. */
export type ReadItems = WeakMap<object, Fork | Place | Mark>;

/**
 * Checks a parsed JSON value or a stored record and copies only what belongs to an experiment.
 * Every fault names the field and what was found there.
 * @param readItems  shared between readings of states that share their items: each is then read once and stays shared
 */
export function readExperiment(value: unknown, readItems: ReadItems = new WeakMap()): ExperimentReading {
  const migrated = migrateExperiment(value);
  if ('fault' in migrated) return { kind: 'faults', faults: [migrated.fault] };
  const reader = new RecordReader('', migrated.record, []);
  const once = readOnce(readItems);
  const forks = reader.list('forks', LONGEST_LIST).map(once(readFork));
  const places = reader.list('places', LONGEST_LIST).map(once(readPlace));
  const marks = reader.list('marks', LONGEST_LIST).map(once(readMark));
  const deletedMarks = reader.list('deletedMarks', LONGEST_LIST).map(once(readMark));
  const tube = reader.child('tube');
  const rule = reader.child('rule');
  const present = reader.child('present');
  const experiment: Experiment = {
    schemaVersion: SCHEMA_VERSION,
    id: reader.text('id', 200),
    title: reader.text('title', 500),
    createdAt: reader.text('createdAt', 50),
    changedAt: reader.text('changedAt', 50),
    forks,
    places,
    tube: {
      diameterM: tube.numberOrNull('diameterM', 0.001, 1),
      travelM: tube.number('travelM', 0.01, 20),
    },
    rule: {
      readingStandardUncertaintyM: rule.number('readingStandardUncertaintyM', 1e-6, 0.5),
      zeroOffsetM: rule.number('zeroOffsetM', -1, 1),
    },
    present: {
      forkId: present.text('forkId', 200),
      placeId: present.text('placeId', 200),
      ends: present.choice('ends', ENDS),
    },
    marks,
    deletedMarks,
    note: reader.text('note', 100_000),
    ...(reader.raw('lesson') === undefined ? {} : { lesson: readLesson(reader.child('lesson')) }),
    ...(reader.raw('gainCheck') === undefined ? {} : { gainCheck: readGainCheck(reader.child('gainCheck')) }),
  };
  const faults = [...reader.faults, ...danglingFaults(experiment)];
  return faults.length === 0 ? { kind: 'experiment', experiment } : { kind: 'faults', faults };
}

/** Reads an item once for all readings that share `readItems`; one with a fault is read and named each time. */
function readOnce(readItems: ReadItems) {
  return <T extends Fork | Place | Mark>(read: (reader: RecordReader) => T) =>
    (reader: RecordReader): T => {
      const { source } = reader;
      const known = source === null ? undefined : readItems.get(source);
      if (known !== undefined) return known as T;
      const faultsBefore = reader.faults.length;
      const item = read(reader);
      if (source !== null && reader.faults.length === faultsBefore) readItems.set(source, item);
      return item;
    };
}

/** Checks what a lesson says; faults go to the reader's list. */
export function readLesson(lesson: RecordReader): Lesson {
  return {
    task: lesson.text('task', 2000),
    hideExpected: lesson.flag('hideExpected'),
    hideTheory: lesson.flag('hideTheory'),
    hideTruth: lesson.flag('hideTruth'),
  };
}

function readGainCheck(check: RecordReader): GainCheckRecord {
  return {
    checkedAt: check.text('checkedAt', 50),
    verdict: check.choice('verdict', ['steady', 'rewritten']),
    departureDb: check.number('departureDb', 0, 300),
    limitDb: check.number('limitDb', 0, 300),
    device: check.raw('device') === null ? null : check.text('device', 500),
  };
}

function readFork(fork: RecordReader): Fork {
  return {
    id: fork.text('id', 200),
    nominalHz: fork.number('nominalHz', 20, 20_000),
    standardUncertaintyHz: fork.number('standardUncertaintyHz', 1e-6, 1000),
    measuredHz: fork.numberOrNull('measuredHz', 20, 20_000),
    measuredStandardUncertaintyHz: fork.numberOrNull('measuredStandardUncertaintyHz', 0, 1000),
  };
}

function readPlace(place: RecordReader): Place {
  return {
    id: place.text('id', 200),
    name: place.text('name', 500),
    temperatureC: place.numberOrNull('temperatureC', -60, 100),
    temperatureStandardUncertaintyC: place.number('temperatureStandardUncertaintyC', 0, 50),
    humidityPct: place.numberOrNull('humidityPct', 0, 100),
    pressurePa: place.numberOrNull('pressurePa', 10_000, 200_000),
  };
}

function readMark(mark: RecordReader): Mark {
  const evidence = mark.childOrNull('evidence');
  return {
    id: mark.text('id', 200),
    createdAt: mark.text('createdAt', 50),
    forkId: mark.text('forkId', 200),
    placeId: mark.text('placeId', 200),
    ends: mark.choice('ends', ENDS),
    lengthM: mark.numberOrNull('lengthM', 1e-4, 20),
    otherLengthM: mark.numberOrNull('otherLengthM', 1e-4, 20),
    evidence: evidence === null ? null : readEvidence(evidence),
    order: mark.wholeOrNull('order', 1, 100),
    excluded: mark.flag('excluded'),
    note: mark.text('note', 10_000),
    ...((mark.raw('repeatOf') ?? null) === null ? {} : { repeatOf: mark.text('repeatOf', 200) }),
  };
}

function readEvidence(evidence: RecordReader): MarkEvidence {
  const trace = evidence.childOrNull('trace');
  return {
    source: evidence.choice('source', SOURCES),
    timeS: evidence.number('timeS', 0, 1e7),
    riseDb: evidence.number('riseDb', -300, 300),
    aboveRoomDb: evidence.number('aboveRoomDb', -300, 300),
    confidence: evidence.number('confidence', 0, 1),
    frequencyHz: evidence.numberOrNull('frequencyHz', 20, 20_000),
    frequencyStandardUncertaintyHz: evidence.numberOrNull('frequencyStandardUncertaintyHz', 0, 1000),
    reason: evidence.text('reason', 2000),
    trace: trace === null ? null : readTrace(trace),
  };
}

function readTrace(trace: RecordReader): LevelStretch {
  const toneDb = trace.numbers('toneDb', LONGEST_TRACE, -1000, 1000, true);
  const roomDb = trace.numbers('roomDb', LONGEST_TRACE, -1000, 1000);
  trace.require(toneDb.length === roomDb.length, 'must have as many values in toneDb as in roomDb');
  return {
    startS: trace.number('startS', 0, 1e7),
    stepS: trace.number('stepS', 1e-3, 10),
    toneDb,
    roomDb,
  };
}

/** Ids that occur twice, and marks that point at a fork or place that isn't there. */
function danglingFaults(experiment: Experiment): string[] {
  const faults: string[] = [];
  const forkIds = new Set(experiment.forks.map((fork) => fork.id));
  const placeIds = new Set(experiment.places.map((place) => place.id));
  const allMarks = [...experiment.marks, ...experiment.deletedMarks];
  if (forkIds.size !== experiment.forks.length) faults.push('forks: two forks have the same id.');
  if (placeIds.size !== experiment.places.length) faults.push('places: two places have the same id.');
  if (new Set(allMarks.map((mark) => mark.id)).size !== allMarks.length) {
    faults.push('marks: two marks have the same id.');
  }
  const users = [{ where: 'present', ...experiment.present }].concat(
    allMarks.map((mark) => ({ where: `mark ${mark.id}`, ...mark })),
  );
  for (const { where, forkId, placeId } of users) {
    if (!forkIds.has(forkId)) faults.push(`${where}: there is no fork “${forkId}” in this file.`);
    if (!placeIds.has(placeId)) faults.push(`${where}: there is no place “${placeId}” in this file.`);
  }
  return faults;
}
