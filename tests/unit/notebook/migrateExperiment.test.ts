import { describe, expect, it } from 'vitest';
import { SCHEMA_VERSION } from '../../../src/notebook/experiment.ts';
import { readExperiment } from '../../../src/notebook/readExperiment.ts';
import { RECORDS_OF_EVERY_VERSION } from './recordsOfEveryVersion.ts';
import { titleWords } from '../../../src/words/titles.ts';
import { recordFaultWords } from '../../../src/words/recordFaults.ts';

describe('records of every earlier version', () => {
  it('are all here, today’s included', () => {
    expect(RECORDS_OF_EVERY_VERSION.map((record) => record.schemaVersion)).toEqual(
      Array.from({ length: SCHEMA_VERSION }, (_, index) => index + 1),
    );
  });

  for (const record of RECORDS_OF_EVERY_VERSION) {
    it(`version ${record.schemaVersion} opens with all that it held`, () => {
      const reading = readExperiment(structuredClone(record));
      if (reading.kind === 'faults') throw new Error(reading.faults.map(recordFaultWords).join(' '));
      const { experiment } = reading;
      expect(experiment.schemaVersion).toBe(SCHEMA_VERSION);
      expect(experiment.title).toBe(record.title);
      expect(experiment.marks.map((mark) => mark.lengthM)).toEqual([0.158, null]);
      expect(experiment.marks[0]?.evidence).toMatchObject({ timeS: 12.5, riseDb: 14.2, confidence: 0.97 });
      expect(experiment.deletedMarks[0]?.lengthM).toBe(0.3);
      expect(experiment.forks[0]?.measuredHz).toBe(511.8);
      expect(experiment.lesson?.hideTheory).toBe(true);
      expect(experiment.note).toBe('Window open.');
    });
  }

  it('how a length was found and when the column had it come back; older records say neither', () => {
    const read = (version: number) => {
      const reading = readExperiment(structuredClone(RECORDS_OF_EVERY_VERSION[version - 1]));
      if (reading.kind === 'faults') throw new Error(reading.faults.map(recordFaultWords).join(' '));
      return reading.experiment;
    };
    const third = read(3);
    expect(third.marks[0]?.locatedBy).toBe('centre');
    expect(third.marks[0]?.evidence?.centre).toEqual({
      timeS: 12.41,
      standardUncertaintyHalfWidths: 0.12,
      shareRe: 2.1,
      shareIm: -1.4,
    });
    expect(third.deletedMarks[0]).toMatchObject({ locatedBy: 'loudest', evidence: { centre: null } });
    for (const older of [1, 2]) {
      const [mark] = read(older).marks;
      expect(mark?.locatedBy).toBeUndefined();
      expect(mark?.evidence?.centre).toBeUndefined();
    }
  });

  it('what a record stated of the reading stays, and its mouth is not described; today’s says more', () => {
    for (const record of RECORDS_OF_EVERY_VERSION) {
      const reading = readExperiment(structuredClone(record));
      if (reading.kind === 'faults') throw new Error(reading.faults.map(recordFaultWords).join(' '));
      expect(reading.experiment.places[0]?.co2MoleFraction).toBe(record.schemaVersion < 4 ? null : 0.0009);
      const { readingStandardUncertaintyM } = reading.experiment.rule;
      expect(readingStandardUncertaintyM).toBe(record.schemaVersion < 4 ? 0.001 : null);
      expect(reading.experiment.tube).toMatchObject(
        record.schemaVersion < 4
          ? { otherDiameterM: null, mouth: null }
          : { otherDiameterM: 0.031, mouth: 'flange' },
      );
    }
  });

  it('a column was closed by a piston and full of air until a record could say otherwise', () => {
    for (const record of RECORDS_OF_EVERY_VERSION) {
      const reading = readExperiment(structuredClone(record));
      if (reading.kind === 'faults') throw new Error(reading.faults.map(recordFaultWords).join(' '));
      const isOld = record.schemaVersion < 5;
      expect(reading.experiment.tube.stopper).toBe(isOld ? 'piston' : 'filled');
      expect(reading.experiment.places[0]?.filling).toBe(isOld ? 'air' : 'carbon-dioxide');
    }
  });

  it('group, class and what a lesson bears come back; older records name neither', () => {
    for (const record of RECORDS_OF_EVERY_VERSION) {
      const reading = readExperiment(structuredClone(record));
      if (reading.kind === 'faults') throw new Error(reading.faults.map(recordFaultWords).join(' '));
      const { group, className, lesson } = reading.experiment;
      const isNamed = record.schemaVersion >= 5;
      expect({ group, className }).toEqual(
        isNamed ? { group: 'Window side', className: '9b' } : { group: '', className: '' },
      );
      expect(lesson?.reveal).toBe(isNamed ? '0a55e1b7' : undefined);
      expect(lesson?.id).toBe(isNamed ? '1f00c3d2' : undefined);
      expect(lesson?.language).toBe(isNamed ? 'en' : undefined);
    }
  });

  it('titles that nobody typed, and copies, are known as such, and each is called as before', () => {
    const [, , third] = RECORDS_OF_EVERY_VERSION;
    const read = (title: string) => {
      const reading = readExperiment({ ...structuredClone(third), title });
      if (reading.kind === 'faults') throw new Error(reading.faults.map(recordFaultWords).join(' '));
      return reading.experiment;
    };
    const origin = { kind: 'experiment', number: 1, copy: 0 };
    // As the page made and counted titles until version 3.
    const before = [
      ['Experiment', '', origin],
      ['Experiment 12', '', { ...origin, number: 12 }],
      ['Lesson', '', { ...origin, kind: 'lesson' }],
      ['Experiment 2 (copy 3)', '', { ...origin, number: 2, copy: 3 }],
      ['Cellar (copy)', 'Cellar', { ...origin, copy: 1 }],
      ['Experiment about air', 'Experiment about air', origin],
      ['Experiment 1', 'Experiment 1', origin],
      ['experiment', 'experiment', origin],
      ['Cellar (copy 1)', 'Cellar (copy 1)', origin],
      ['Two\nlines (copy)', 'Two\nlines', { ...origin, copy: 1 }],
    ] as const;
    for (const [title, own, from] of before) {
      expect(read(title)).toMatchObject({ title: own, origin: from });
      expect(titleWords(read(title))).toBe(title);
    }
    expect(read('')).toMatchObject({ title: '', origin });
  });

  it('a record of a newer bench is left alone and named', () => {
    const reading = readExperiment({ schemaVersion: SCHEMA_VERSION + 1 });
    expect(reading).toMatchObject({ kind: 'faults' });
    expect(reading.kind === 'faults' ? reading.faults.map(recordFaultWords).join() : '').toMatch(
      /made by a newer version of this page/,
    );
  });
});
