import { FILLINGS } from '../air/gases.ts';
import { MOUTH_SHAPES } from '../air/mouth.ts';
import type { MouthShape } from '../air/mouth.ts';
import { LIMITS } from '../limits/limits.ts';
import { LONGEST } from '../limits/longest.ts';
import { COLUMN_ENDS, MARK_DOUBTS } from '../marks/mark.ts';
import type { LevelStretch, LocatedBy, Mark, MarkEvidence, ResonanceCentre } from '../marks/mark.ts';
import { hasColumn } from '../marks/columnOfMark.ts';
import { SCHEMA_VERSION, STOPPERS } from './experiment.ts';
import type { Experiment, Fork, GainCheckRecord, Lesson, Place } from './experiment.ts';
import { migrateExperiment } from './migrateExperiment.ts';
import type { RecordFault } from './recordFault.ts';
import { RecordReader } from './recordReader.ts';
import type { Outside, RecordFaults } from './recordReader.ts';

/** A record as understood, or everything that is wrong with it. */
export type ExperimentReading =
  | { readonly kind: 'experiment'; readonly experiment: Experiment }
  | {
      readonly kind: 'faults';
      readonly faults: readonly RecordFault[];
      /** Those of them that are numbers outside of their limits. */
      readonly outside: readonly Outside[];
    };

const LOCATED_BY: readonly LocatedBy[] = ['centre', 'loudest'];
const SOURCES: readonly MarkEvidence['source'][] = ['microphone', 'recording', 'practice'];

/** Items of lists that were found good, by the object they were read from. */
export interface ReadItems {
  get(source: object): Fork | Place | Mark | undefined;
  set(source: object, item: Fork | Place | Mark): void;
}

/**
 * Checks a parsed JSON value or a stored record and copies only what belongs to an experiment.
 * Every fault names the field and what was found there.
 * @param readItems  shared between readings of states that share their items: each is then read once and stays shared
 */
export function readExperiment(value: unknown, readItems: ReadItems = new WeakMap()): ExperimentReading {
  const migrated = migrateExperiment(value);
  if ('fault' in migrated) return { kind: 'faults', faults: [migrated.fault], outside: [] };
  const reader = new RecordReader('', migrated.record);
  const once = readOnce(readItems);
  const forks = reader.list('forks', LONGEST.list).map(once(readFork));
  const places = reader.list('places', LONGEST.list).map(once(readPlace));
  const marks = reader.list('marks', LONGEST.list).map(once(readMark));
  const deletedMarks = reader.list('deletedMarks', LONGEST.list).map(once(readMark));
  const tube = reader.child('tube');
  const rule = reader.child('rule');
  const present = reader.child('present');
  const origin = reader.child('origin');
  const experiment: Experiment = {
    schemaVersion: SCHEMA_VERSION,
    id: reader.text('id', LONGEST.id),
    title: reader.text('title', LONGEST.title),
    origin: {
      kind: origin.choice('kind', ['experiment', 'lesson']),
      number: origin.whole('number', LIMITS.originNumber),
      copy: origin.whole('copy', LIMITS.copyNumber),
    },
    createdAt: reader.text('createdAt', LONGEST.time),
    changedAt: reader.text('changedAt', LONGEST.time),
    forks,
    places,
    tube: {
      diameterM: tube.numberOrNull('diameterM', LIMITS.diameterM),
      otherDiameterM: tube.numberOrNull('otherDiameterM', LIMITS.diameterM),
      mouth: readMouth(tube),
      stopper: tube.choice('stopper', STOPPERS),
      travelM: tube.number('travelM', LIMITS.travelM),
    },
    rule: {
      readingStandardUncertaintyM: rule.numberOrNull(
        'readingStandardUncertaintyM',
        LIMITS.readingStandardUncertaintyM,
      ),
      zeroOffsetM: rule.number('zeroOffsetM', LIMITS.zeroOffsetM),
    },
    present: {
      forkId: present.text('forkId', LONGEST.id),
      placeId: present.text('placeId', LONGEST.id),
      ends: present.choice('ends', COLUMN_ENDS),
    },
    marks,
    deletedMarks,
    note: reader.text('note', LONGEST.note),
    group: reader.text('group', LONGEST.name),
    className: reader.text('className', LONGEST.name),
    ...(reader.raw('lesson') === undefined ? {} : { lesson: readLesson(reader.child('lesson')) }),
    ...(reader.raw('gainCheck') === undefined ? {} : { gainCheck: readGainCheck(reader.child('gainCheck')) }),
  };
  const { faults } = reader;
  if (faults.all.length === 0) findColumnFaults(experiment, faults);
  const all = [...faults.all, ...danglingFaults(experiment)];
  return all.length === 0
    ? { kind: 'experiment', experiment }
    : { kind: 'faults', faults: all, outside: faults.outside };
}

/** A tube's mouth; faults go to the reader's list. */
export function readMouth(tube: RecordReader): MouthShape | null {
  return tube.raw('mouth') === null ? null : tube.choice('mouth', MOUTH_SHAPES);
}

/** Readings from which the rule's zero offset leaves no column. */
function findColumnFaults(experiment: Experiment, faults: RecordFaults): void {
  const { zeroOffsetM } = experiment.rule;
  for (const list of ['marks', 'deletedMarks'] as const) {
    for (const [index, mark] of experiment[list].entries()) {
      for (const field of ['lengthM', 'otherLengthM'] as const) {
        const found = mark[field];
        if (found === null || hasColumn(found, zeroOffsetM)) continue;
        const path = `${list}[${index}].${field}`;
        faults.addOutside({ path, found, limit: LIMITS.lengthM }, { kind: 'reading', zeroOffsetM });
      }
    }
  }
}

/** Reads an item once for all readings that share `readItems`; one with a fault is read and named each time. */
function readOnce(readItems: ReadItems) {
  return <T extends Fork | Place | Mark>(read: (reader: RecordReader) => T) =>
    (reader: RecordReader): T => {
      const { source } = reader;
      const known = source === null ? undefined : readItems.get(source);
      if (known !== undefined) return known as T;
      const faultsBefore = reader.faults.all.length;
      const item = read(reader);
      if (source !== null && reader.faults.all.length === faultsBefore) readItems.set(source, item);
      return item;
    };
}

/** Checks what a lesson says; faults go to the reader's list. */
export function readLesson(lesson: RecordReader): Lesson {
  return {
    task: lesson.text('task', LONGEST.task),
    hideExpected: lesson.flag('hideExpected'),
    hideTheory: lesson.flag('hideTheory'),
    hideTruth: lesson.flag('hideTruth'),
    ...(lesson.raw('id') === undefined ? {} : { id: lesson.text('id', LONGEST.id) }),
    ...(lesson.raw('reveal') === undefined ? {} : { reveal: lesson.text('reveal', LONGEST.lessonKey) }),
    ...(lesson.raw('language') === undefined ? {} : { language: lesson.text('language', LONGEST.lessonKey) }),
  };
}

function readGainCheck(check: RecordReader): GainCheckRecord {
  return {
    checkedAt: check.text('checkedAt', LONGEST.time),
    verdict: check.choice('verdict', ['steady', 'rewritten']),
    departureDb: check.number('departureDb', LIMITS.gainDepartureDb),
    limitDb: check.number('limitDb', LIMITS.gainDepartureDb),
    device: check.raw('device') === null ? null : check.text('device', LONGEST.device),
  };
}

function readFork(fork: RecordReader): Fork {
  return {
    id: fork.text('id', LONGEST.id),
    nominalHz: fork.number('nominalHz', LIMITS.stampedHz),
    standardUncertaintyHz: fork.number('standardUncertaintyHz', LIMITS.forkStandardUncertaintyHz),
    measuredHz: fork.numberOrNull('measuredHz', LIMITS.pitchHz),
    measuredStandardUncertaintyHz: fork.numberOrNull(
      'measuredStandardUncertaintyHz',
      LIMITS.forkStandardUncertaintyHz,
    ),
  };
}

function readPlace(place: RecordReader): Place {
  return {
    id: place.text('id', LONGEST.id),
    name: place.text('name', LONGEST.name),
    temperatureC: place.numberOrNull('temperatureC', LIMITS.temperatureC),
    temperatureStandardUncertaintyC: place.number(
      'temperatureStandardUncertaintyC',
      LIMITS.temperatureStandardUncertaintyC,
    ),
    humidityPct: place.numberOrNull('humidityPct', LIMITS.humidityPct),
    pressurePa: place.numberOrNull('pressurePa', LIMITS.pressurePa),
    filling: place.choice('filling', FILLINGS),
    co2MoleFraction: place.numberOrNull('co2MoleFraction', LIMITS.co2MoleFraction),
  };
}

function readMark(mark: RecordReader): Mark {
  const evidence = mark.childOrNull('evidence');
  return {
    id: mark.text('id', LONGEST.id),
    createdAt: mark.text('createdAt', LONGEST.time),
    forkId: mark.text('forkId', LONGEST.id),
    placeId: mark.text('placeId', LONGEST.id),
    ends: mark.choice('ends', COLUMN_ENDS),
    lengthM: mark.numberOrNull('lengthM', LIMITS.lengthM),
    otherLengthM: mark.numberOrNull('otherLengthM', LIMITS.lengthM),
    evidence: evidence === null ? null : readEvidence(evidence),
    order: mark.wholeOrNull('order', LIMITS.order),
    excluded: mark.flag('excluded'),
    note: mark.text('note', LONGEST.markNote),
    ...(mark.raw('locatedBy') === undefined ? {} : { locatedBy: mark.choice('locatedBy', LOCATED_BY) }),
    ...(mark.raw('repeatOf') === undefined ? {} : { repeatOf: mark.textOrNull('repeatOf', LONGEST.id) }),
  };
}

function readEvidence(evidence: RecordReader): MarkEvidence {
  const trace = evidence.childOrNull('trace');
  return {
    source: evidence.choice('source', SOURCES),
    timeS: evidence.number('timeS', LIMITS.timeS),
    riseDb: evidence.number('riseDb', LIMITS.riseDb),
    aboveRoomDb: evidence.number('aboveRoomDb', LIMITS.riseDb),
    confidence: evidence.number('confidence', LIMITS.confidence),
    frequencyHz: evidence.numberOrNull('frequencyHz', LIMITS.pitchHz),
    frequencyStandardUncertaintyHz: evidence.numberOrNull(
      'frequencyStandardUncertaintyHz',
      LIMITS.forkStandardUncertaintyHz,
    ),
    reason: evidence.text('reason', LONGEST.reason),
    trace: trace === null ? null : readTrace(trace),
    ...(evidence.raw('doubt') === undefined ? {} : { doubt: evidence.choices('doubt', MARK_DOUBTS) }),
    ...(evidence.raw('centre') === undefined ? {} : { centre: readCentre(evidence.childOrNull('centre')) }),
  };
}

function readCentre(centre: RecordReader | null): ResonanceCentre | null {
  if (centre === null) return null;
  return {
    timeS: centre.number('timeS', LIMITS.timeS),
    standardUncertaintyHalfWidths: centre.number(
      'standardUncertaintyHalfWidths',
      LIMITS.centreStandardUncertaintyHalfWidths,
    ),
    shareRe: centre.number('shareRe', LIMITS.centreShare),
    shareIm: centre.number('shareIm', LIMITS.centreShare),
  };
}

function readTrace(trace: RecordReader): LevelStretch {
  const toneDb = trace.numbers('toneDb', LONGEST.trace, LIMITS.traceDb, true);
  const roomDb = trace.numbers('roomDb', LONGEST.trace, LIMITS.traceDb);
  trace.requireSameLength(['toneDb', 'roomDb'], [toneDb.length, roomDb.length]);
  return {
    startS: trace.number('startS', LIMITS.timeS),
    stepS: trace.number('stepS', LIMITS.traceStepS),
    toneDb,
    roomDb,
  };
}

/** Ids that occur twice, and marks that point at a fork or place that isn't there. */
function danglingFaults(experiment: Experiment): RecordFault[] {
  const faults: RecordFault[] = [];
  const forkIds = new Set(experiment.forks.map((fork) => fork.id));
  const placeIds = new Set(experiment.places.map((place) => place.id));
  const allMarks = [...experiment.marks, ...experiment.deletedMarks];
  if (forkIds.size !== experiment.forks.length) faults.push({ code: 'same-id', list: 'forks' });
  if (placeIds.size !== experiment.places.length) faults.push({ code: 'same-id', list: 'places' });
  if (new Set(allMarks.map((mark) => mark.id)).size !== allMarks.length) {
    faults.push({ code: 'same-id', list: 'marks' });
  }
  for (const { markId, forkId, placeId } of [
    { ...experiment.present, markId: null },
    ...allMarks.map((mark) => ({ ...mark, markId: mark.id })),
  ]) {
    if (!forkIds.has(forkId)) faults.push({ code: 'dangling', markId, to: 'fork', id: forkId });
    if (!placeIds.has(placeId)) faults.push({ code: 'dangling', markId, to: 'place', id: placeId });
  }
  return faults;
}
