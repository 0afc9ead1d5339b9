/**
 * One record of every version of the notebook's schema, written down as the bench of that time stored it. Never
 * change one: records like these lie in browsers. A new version adds its own at the end.
 */
interface OldRecord {
  readonly schemaVersion: number;
  readonly title: string;
  readonly [field: string]: unknown;
}

const shared = {
  id: 'kept',
  createdAt: '2030-03-01T10:00:00.000Z',
  changedAt: '2030-03-01T10:20:00.000Z',
  forks: [
    {
      id: 'fork-1',
      nominalHz: 512,
      standardUncertaintyHz: 0.512,
      measuredHz: 511.8,
      measuredStandardUncertaintyHz: 0.02,
    },
  ],
  places: [
    {
      id: 'place-1',
      name: 'Bench',
      temperatureC: 21.5,
      temperatureStandardUncertaintyC: 0.5,
      humidityPct: null,
      pressurePa: 101_300,
    },
  ],
  tube: { diameterM: 0.035, travelM: 1 },
  rule: { readingStandardUncertaintyM: 0.001, zeroOffsetM: 0.002 },
  present: { forkId: 'fork-1', placeId: 'place-1', ends: 'closed' },
  note: 'Window open.',
  lesson: { task: 'Find two.', hideExpected: false, hideTheory: true, hideTruth: false },
};

const mark = (id: string, lengthM: number | null, evidence: unknown): object => ({
  id,
  createdAt: '2030-03-01T10:05:00.000Z',
  forkId: 'fork-1',
  placeId: 'place-1',
  ends: 'closed',
  lengthM,
  otherLengthM: null,
  evidence,
  order: null,
  excluded: false,
  note: '',
});

const evidence = {
  source: 'microphone',
  timeS: 12.5,
  riseDb: 14.2,
  aboveRoomDb: 30,
  confidence: 0.97,
  frequencyHz: 511.8,
  frequencyStandardUncertaintyHz: 0.05,
  reason: 'level and phase agree',
};

const traced = {
  ...evidence,
  trace: { startS: 9.5, stepS: 0.05, toneDb: [-41.2, null, -30], roomDb: [-60, -60.5, -61] },
};

export const RECORDS_OF_EVERY_VERSION: readonly OldRecord[] = [
  {
    ...shared,
    schemaVersion: 1,
    title: 'As first kept',
    marks: [mark('a', 0.158, evidence), mark('b', null, null)],
    deletedMarks: [mark('c', 0.3, evidence)],
  },
  {
    ...shared,
    schemaVersion: 2,
    title: 'With traces',
    marks: [mark('a', 0.158, traced), mark('b', null, null)],
    deletedMarks: [mark('c', 0.3, { ...evidence, trace: null })],
  },
  {
    ...shared,
    schemaVersion: 3,
    title: 'With centres',
    marks: [
      {
        ...mark('a', 0.158, {
          ...traced,
          centre: { timeS: 12.41, standardUncertaintyHalfWidths: 0.12, shareRe: 2.1, shareIm: -1.4 },
        }),
        locatedBy: 'centre',
      },
      mark('b', null, null),
    ],
    deletedMarks: [{ ...mark('c', 0.3, { ...traced, centre: null }), locatedBy: 'loudest' }],
  },
  {
    ...shared,
    schemaVersion: 4,
    title: 'With mouths, two widths, carbon dioxide, readings that nobody stated, and an origin',
    origin: { kind: 'lesson', number: 1, copy: 2 },
    tube: { ...shared.tube, otherDiameterM: 0.031, mouth: 'flange' },
    places: shared.places.map((place) => ({ ...place, co2MoleFraction: 0.0009 })),
    rule: { readingStandardUncertaintyM: null, zeroOffsetM: 0.002 },
    marks: [mark('a', 0.158, traced), mark('b', null, null)],
    deletedMarks: [mark('c', 0.3, traced)],
  },
  {
    ...shared,
    schemaVersion: 5,
    title: 'With water in the tube, a group, its class, and a lesson that a code reveals',
    origin: { kind: 'lesson', number: 1, copy: 2 },
    group: 'Window side',
    className: '9b',
    lesson: { ...shared.lesson, id: '1f00c3d2', reveal: '0a55e1b7', language: 'en' },
    tube: { ...shared.tube, otherDiameterM: 0.031, mouth: 'flange', stopper: 'filled' },
    places: shared.places.map((place) => ({ ...place, filling: 'carbon-dioxide', co2MoleFraction: 0.0009 })),
    rule: { readingStandardUncertaintyM: null, zeroOffsetM: 0.002 },
    marks: [mark('a', 0.158, traced), mark('b', null, null)],
    deletedMarks: [mark('c', 0.3, traced)],
  },
];
