import { SCHEMA_VERSION } from './experiment.ts';
import type { RecordFault } from './recordFault.ts';

type Fields = Readonly<Record<string, unknown>>;

/** What brings a record of each earlier version up to the next one. Written once, never changed afterwards. */
const STEPS: Readonly<Record<number, (record: Fields) => Fields>> = {
  // Version 2 keeps a stretch of the level trace with the evidence of each mark.
  1: (record) => ({
    ...record,
    schemaVersion: 2,
    marks: mapItems(record['marks'], withoutTrace),
    deletedMarks: mapItems(record['deletedMarks'], withoutTrace),
  }),
  // Version 3 may say how a length was found and when the column had it. Records without either stay as they are.
  2: (record) => ({ ...record, schemaVersion: 3 }),
  // Version 4 may say what the tube's mouth looks like, how wide its other end is and how much carbon dioxide a place's
  // air has, and nothing of the reading's uncertainty. It says which titles nobody typed: until then they were texts, and
  // so was that an experiment is a copy. What a record states stays.
  3: (record) => ({
    ...record,
    schemaVersion: 4,
    ...titleOfVersion4(record['title']),
    tube: withFields(record['tube'], { otherDiameterM: null, mouth: null }),
    places: mapItems(record['places'], (place) => ({ ...place, co2MoleFraction: null })),
  }),
  // Version 5 says what closes a column (until then the page spoke of a piston), what gas is in it, and which group of
  // which class made the record; its lesson may bear an id, a digest and a language.
  4: (record) => ({
    ...record,
    schemaVersion: 5,
    tube: withFields(record['tube'], { stopper: 'piston' }),
    places: mapItems(record['places'], (place) => ({ ...place, filling: 'air' })),
    group: '',
    className: '',
  }),
};

/**
 * Brings a record of any earlier version up to today's, field by field and unchecked: `readExperiment` checks
 * the outcome. What is no record passes through as far as it can.
 * @returns the record, or what is wrong with it as a whole
 */
export function migrateExperiment(
  value: unknown,
): { readonly record: Fields } | { readonly fault: RecordFault } {
  if (!isFields(value)) return { fault: { code: 'no-object' } };
  let record = value;
  let version = ownVersion(record);
  if (typeof version === 'number' && Number.isInteger(version) && version > SCHEMA_VERSION) {
    return { fault: { code: 'newer-version', version, newest: SCHEMA_VERSION } };
  }
  while (version !== SCHEMA_VERSION) {
    const step = typeof version === 'number' && Object.hasOwn(STEPS, version) ? STEPS[version] : undefined;
    if (step === undefined) {
      return { fault: { code: 'no-version', found: version, newest: SCHEMA_VERSION } };
    }
    record = step(record);
    version = ownVersion(record);
  }
  return { record };
}

const COPY = /^(.*?)(?: \(copy(?: ([2-9]|[1-9]\d{1,4}))?\))?$/s;
const GIVEN = /^(?:(Experiment|Lesson)(?: ([2-9]|[1-9]\d{1,4}))?)?$/;

function titleOfVersion4(title: unknown): Fields {
  const origin = { kind: 'experiment', number: 1, copy: 0 };
  if (typeof title !== 'string') return { origin };
  const [, own = '', copies] = COPY.exec(title) ?? [];
  const copy = own === title ? 0 : Number(copies ?? 1);
  const given = GIVEN.exec(own);
  if (given === null) return { title: own, origin: { ...origin, copy } };
  const kind = given[1] === 'Lesson' ? 'lesson' : 'experiment';
  return { title: '', origin: { kind, number: Number(given[2] ?? 1), copy } };
}

function ownVersion(record: Fields): unknown {
  return Object.hasOwn(record, 'schemaVersion') ? record['schemaVersion'] : undefined;
}

function withoutTrace(mark: Fields): Fields {
  const evidence = mark['evidence'];
  return isFields(evidence) ? { ...mark, evidence: { ...evidence, trace: null } } : mark;
}

function withFields(value: unknown, fields: Fields): unknown {
  return isFields(value) ? { ...value, ...fields } : value;
}

function mapItems(list: unknown, change: (item: Fields) => Fields): unknown {
  return Array.isArray(list) ? list.map((item: unknown) => (isFields(item) ? change(item) : item)) : list;
}

function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
