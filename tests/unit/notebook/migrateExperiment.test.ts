import { describe, expect, it } from 'vitest';
import { SCHEMA_VERSION } from '../../../src/notebook/experiment.ts';
import { readExperiment } from '../../../src/notebook/readExperiment.ts';
import { RECORDS_OF_EVERY_VERSION } from './recordsOfEveryVersion.ts';
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
    const today = read(3);
    expect(today.marks[0]?.locatedBy).toBe('centre');
    expect(today.marks[0]?.evidence?.centre).toEqual({
      timeS: 12.41,
      standardUncertaintyHalfWidths: 0.12,
      shareRe: 2.1,
      shareIm: -1.4,
    });
    expect(today.deletedMarks[0]).toMatchObject({ locatedBy: 'loudest', evidence: { centre: null } });
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

  it('a record of a newer bench is left alone and named', () => {
    const reading = readExperiment({ schemaVersion: SCHEMA_VERSION + 1 });
    expect(reading).toMatchObject({ kind: 'faults' });
    expect(reading.kind === 'faults' ? reading.faults.map(recordFaultWords).join() : '').toMatch(
      /made by a newer bench/,
    );
  });
});
