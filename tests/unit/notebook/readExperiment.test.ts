import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readExperiment } from '../../../src/notebook/readExperiment.ts';
import { recordFaultWords } from '../../../src/words/recordFaults.ts';
import { experimentJson } from '../../../src/report/experimentJson.ts';
import { exampleExperiment, exampleMark } from './exampleExperiment.ts';

const full = exampleExperiment([
  exampleMark('a', {
    lengthM: 0.158,
    order: 1,
    evidence: {
      source: 'microphone',
      timeS: 12.5,
      riseDb: 14.2,
      aboveRoomDb: 30,
      confidence: 0.97,
      frequencyHz: 511.8,
      frequencyStandardUncertaintyHz: 0.05,
      reason: 'level and phase agree',
      trace: { startS: 9.5, stepS: 0.05, toneDb: [-41.2, null, -30], roomDb: [-60, -60.5, -61] },
      doubt: ['processing-on', 'suppressed'],
    },
  }),
  exampleMark('b'),
]);

function faultsOf(value: unknown): readonly string[] {
  const reading = readExperiment(value);
  return reading.kind === 'faults' ? reading.faults.map(recordFaultWords) : [];
}

describe('readExperiment', () => {
  it('gives back what was written as JSON', () => {
    expect(readExperiment(JSON.parse(experimentJson(full)))).toEqual({
      kind: 'experiment',
      experiment: full,
    });
  });

  it('takes only doubts that it knows, each once', () => {
    const [mark] = full.marks;
    const withDoubt = (doubt: unknown): unknown => ({
      ...full,
      marks: [{ ...mark, evidence: { ...mark?.evidence, doubt } }],
    });
    expect(faultsOf(withDoubt([]))).toEqual([]);
    expect(faultsOf(withDoubt(['suppressed']))).toEqual([]);
    for (const bad of [['loud'], ['suppressed', 'suppressed'], 'suppressed', null, [1]]) {
      expect(faultsOf(withDoubt(bad))[0]).toMatch(/evidence\.doubt/);
    }
  });

  it('names the field and what was found there, for every fault at once', () => {
    const bad = {
      ...full,
      title: 7,
      marks: [
        { ...full.marks[0], lengthM: '15.8' },
        { ...full.marks[1], ends: 'half' },
      ],
    };
    expect(faultsOf(bad)).toEqual([
      'marks[0].lengthM must be a number from 0.0001 to 10, but it is "15.8".',
      'marks[1].ends must be one of closed, open, but it is "half".',
      'title must be text of at most 500 characters, but it is 7.',
    ]);
  });

  it('says when it is no experiment, or one of another version', () => {
    expect(faultsOf([1, 2])[0]).toMatch(/isn’t an experiment/);
    expect(faultsOf(null)[0]).toMatch(/isn’t an experiment/);
    expect(faultsOf({ ...full, schemaVersion: 9 })[0]).toMatch(/schemaVersion is 9/);
  });

  it('names a value of a trace that is no level, and lists of different lengths', () => {
    const withTrace = (trace: object): unknown => {
      const [mark] = full.marks;
      return { ...full, marks: [{ ...mark, evidence: { ...mark?.evidence, trace } }] };
    };
    const trace = { startS: 0, stepS: 0.05, toneDb: [-41, '-40'], roomDb: [-60, -60] };
    expect(faultsOf(withTrace(trace))[0]).toMatch(
      /marks\[0\]\.evidence\.trace\.toneDb\[1\] must be a number/,
    );
    expect(faultsOf(withTrace({ ...trace, toneDb: [-41] }))).toEqual([
      'marks[0].evidence.trace must have as many values in toneDb as in roomDb.',
    ]);
  });

  it('finds marks that point nowhere and ids that occur twice', () => {
    const dangling = { ...full, marks: [exampleMark('a', { forkId: 'gone' }), exampleMark('a')] };
    expect(faultsOf(dangling)).toEqual([
      'marks: two marks have the same id.',
      'mark a: there is no fork “gone” in this file.',
    ]);
  });

  it('takes nothing over that does not belong to an experiment', () => {
    const reading = readExperiment({ ...full, extra: 'x', __proto__: { polluted: true } });
    expect(reading).toEqual({ kind: 'experiment', experiment: full });
  });

  it('never throws on a stored record that is deep, circular or no JSON, in any field', () => {
    let tower: unknown = [];
    for (let floor = 0; floor < 100_000; floor += 1) tower = [tower];
    const circle: Record<string, unknown> = {};
    circle['itself'] = circle;
    const sparse: unknown[] = [];
    sparse.length = 4_000_000_000;
    for (const value of [tower, circle, sparse, 1n, new Map(), 'x'.repeat(1e6)]) {
      for (const field of Object.keys(full)) {
        const faults = faultsOf({ ...full, [field]: value });
        expect(faults.length).toBeGreaterThan(0);
        for (const fault of faults) expect(fault.length).toBeLessThan(400);
      }
      for (const field of ['lengthM', 'evidence', 'ends', 'order', 'note', 'excluded']) {
        const faults = faultsOf({ ...full, marks: [{ ...full.marks[0], [field]: value }] });
        expect(faults[0]).toMatch(/but it is (a list of|an object|1|"x+…")|must be an object|evidence\./);
      }
    }
    expect(faultsOf({ ...full, tube: tower })[0]).toBe('tube must be an object, but it is a list of 1.');
  });

  it('never throws, whatever the file holds', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.constantFrom(...Object.keys(full)), (value, field) => {
        expect(['experiment', 'faults']).toContain(readExperiment(value).kind);
        expect(['experiment', 'faults']).toContain(readExperiment({ ...full, [field]: value }).kind);
      }),
      { numRuns: 500 },
    );
  });
});
