import fc from 'fast-check';
import { FILLINGS } from '../../src/air/gases.ts';
import { MOUTH_SHAPES } from '../../src/air/mouth.ts';
import type { Mark, MarkEvidence } from '../../src/marks/mark.ts';
import { MARK_DOUBTS } from '../../src/marks/mark.ts';
import { STOPPERS } from '../../src/notebook/experiment.ts';
import type { Experiment, Fork, GainCheckRecord, Place } from '../../src/notebook/experiment.ts';
import { newExperiment } from '../../src/notebook/newExperiment.ts';

const time = fc
  .date({ min: new Date('2020-01-01'), max: new Date('2040-01-01'), noInvalidDate: true })
  .map((date) => date.toISOString());
const text = (maxLength: number): fc.Arbitrary<string> =>
  fc.oneof(
    fc.string({ unit: 'binary', maxLength }),
    fc.constantFrom('', 'Bench', '=1+1', '+3', "'quoted", '#1', ' a, "b" ', 'x\r\ny', '<b>&'),
  );
const between = (min: number, max: number): fc.Arbitrary<number> =>
  // JSON has no negative zero.
  fc.double({ min, max, noNaN: true }).map((value) => value + 0);
const orNull = <T>(some: fc.Arbitrary<T>): fc.Arbitrary<T | null> => fc.option(some, { nil: null });

const trace = fc
  .array(fc.tuple(orNull(between(-200, 10)), between(-200, 10)), { maxLength: 6 })
  .chain((points) =>
    fc.record({
      startS: between(0, 1000),
      stepS: between(0.01, 1),
      toneDb: fc.constant(points.map(([tone]) => tone)),
      roomDb: fc.constant(points.map(([, room]) => room)),
    }),
  );

const heard: fc.Arbitrary<Omit<MarkEvidence, 'doubt'>> = fc.record({
  source: fc.constantFrom('microphone' as const, 'recording' as const, 'practice' as const),
  timeS: between(0, 5000),
  riseDb: between(0, 40),
  aboveRoomDb: between(0, 60),
  confidence: between(0, 1),
  frequencyHz: orNull(between(100, 2000)),
  frequencyStandardUncertaintyHz: orNull(between(0, 2)),
  reason: text(20),
  trace: orNull(trace),
});

const doubt = fc.uniqueArray(fc.constantFrom(...MARK_DOUBTS));
const evidence: fc.Arbitrary<MarkEvidence> = fc.oneof(
  heard,
  fc.tuple(heard, doubt).map(([found, own]) => ({ ...found, doubt: own })),
);

const gainCheck: fc.Arbitrary<GainCheckRecord> = fc.record({
  checkedAt: time,
  verdict: fc.constantFrom('steady' as const, 'rewritten' as const),
  departureDb: between(0, 20),
  limitDb: between(0, 20),
  device: orNull(text(12)),
});

const fork: fc.Arbitrary<Omit<Fork, 'id'>> = fc.record({
  nominalHz: fc.oneof(fc.constantFrom(256, 341.3, 512), between(100, 2000)),
  standardUncertaintyHz: between(0.01, 3),
  measuredHz: orNull(between(100, 2000)),
  measuredStandardUncertaintyHz: orNull(between(0.001, 2)),
});

const place: fc.Arbitrary<Omit<Place, 'id'>> = fc.record({
  name: text(12),
  temperatureC: orNull(between(-20, 50)),
  temperatureStandardUncertaintyC: fc.constantFrom(0.5, 1),
  humidityPct: orNull(fc.integer({ min: 0, max: 100 })),
  pressurePa: orNull(between(60_000, 105_000)),
  filling: fc.constantFrom(...FILLINGS),
  co2MoleFraction: orNull(between(0, 0.01)),
});

const mark = (forkIds: readonly string[], placeIds: readonly string[]): fc.Arbitrary<Omit<Mark, 'id'>> =>
  fc
    .record({
      createdAt: time,
      forkId: fc.constantFrom(...forkIds),
      placeId: fc.constantFrom(...placeIds),
      ends: fc.constantFrom('closed' as const, 'open' as const),
      lengthM: orNull(between(0.06, 3)),
      otherLengthM: fc.option(between(0.06, 3), { nil: null, freq: 3 }),
      evidence: orNull(evidence),
      order: fc.option(fc.integer({ min: 1, max: 12 }), { nil: null, freq: 3 }),
      excluded: fc.boolean(),
      note: text(20),
    })
    .chain((one) =>
      fc.constantFrom(
        one,
        { ...one, locatedBy: 'centre' as const },
        { ...one, locatedBy: 'loudest' as const },
      ),
    );

/** Any experiment that the page can make: several forks and places, every text hostile, at most six marks. */
export const anyExperiment: fc.Arbitrary<Experiment> = fc
  .tuple(fc.array(fork, { minLength: 1, maxLength: 3 }), fc.array(place, { minLength: 1, maxLength: 3 }))
  .chain(([forks, places]) => {
    const forkIds = forks.map((_, index) => `fork-${index + 1}`);
    const placeIds = places.map((_, index) => `place-${index + 1}`);
    const marks = fc.array(mark(forkIds, placeIds), { maxLength: 6 }).map((list) =>
      list.map((one, index) => ({
        ...one,
        id: `mark-${index + 1}`,
        // A passage back over the first mark's resonance.
        ...(index > 0 && one.lengthM === null ? { repeatOf: 'mark-1' } : {}),
      })),
    );
    return fc
      .record({
        id: fc.uuid(),
        title: text(30),
        origin: fc.record({
          kind: fc.constantFrom('experiment' as const, 'lesson' as const),
          number: fc.integer({ min: 1, max: 100_000 }),
          copy: fc.integer({ min: 0, max: 100_000 }),
        }),
        createdAt: time,
        changedAt: time,
        otherDiameterM: orNull(between(0.01, 0.2)),
        mouth: orNull(fc.constantFrom(...MOUTH_SHAPES)),
        stopper: fc.constantFrom(...STOPPERS),
        diameterM: orNull(between(0.01, 0.2)),
        readingStandardUncertaintyM: orNull(between(0.0001, 0.01)),
        zeroOffsetM: between(-0.05, 0.04),
        marks,
        deleted: fc.integer({ min: 0, max: 2 }),
        note: text(50),
        group: text(20),
        className: text(20),
        hidden: orNull(fc.boolean()),
        gainCheck: orNull(gainCheck),
      })
      .map((rest): Experiment => ({
        ...newExperiment(rest.id, rest.createdAt),
        title: rest.title,
        origin: rest.origin,
        changedAt: rest.changedAt,
        forks: forks.map((one, index) => ({ ...one, id: forkIds[index] ?? '' })),
        places: places.map((one, index) => ({ ...one, id: placeIds[index] ?? '' })),
        tube: {
          diameterM: rest.diameterM,
          otherDiameterM: rest.otherDiameterM,
          mouth: rest.mouth,
          stopper: rest.stopper,
          travelM: 1.2,
        },
        rule: {
          readingStandardUncertaintyM: rest.readingStandardUncertaintyM,
          zeroOffsetM: rest.zeroOffsetM,
        },
        present: { forkId: 'fork-1', placeId: 'place-1', ends: 'closed' },
        marks: rest.marks.slice(rest.deleted),
        deletedMarks: rest.marks.slice(0, rest.deleted),
        note: rest.note,
        group: rest.group,
        className: rest.className,
        ...(rest.gainCheck === null ? {} : { gainCheck: rest.gainCheck }),
        ...(rest.hidden === null
          ? {}
          : {
              lesson: {
                task: 'Measure',
                hideExpected: true,
                hideTheory: rest.hidden,
                hideTruth: false,
                ...(rest.hidden ? { id: 'a1', reveal: '0c', language: 'de' } : {}),
              },
            }),
      }));
  });
