import { describe, expect, it } from 'vitest';
import { groupsOfIntake } from '../../../src/classroom/groupsOfIntake.ts';
import type { Experiment } from '../../../src/notebook/experiment.ts';
import { exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';
import { newExperiment } from '../../../src/notebook/newExperiment.ts';

describe('a group’s name', () => {
  const nameOf = (change: Partial<Experiment>) => {
    const experiment = { ...newExperiment('a', '2030-03-01T10:00:00.000Z'), ...change };
    const [group] = groupsOfIntake({
      name: 'bench 3.json',
      content: { kind: 'experiment', experiment },
      faults: [],
      remarks: [],
    });
    return { name: group?.name, isNamed: group?.isNamed };
  };
  const origin = { kind: 'experiment', number: 2, copy: 1 } as const;

  it('is the file’s where nobody named the experiment, whatever it is called on the page', () => {
    expect(nameOf({})).toEqual({ name: 'bench 3', isNamed: false });
    expect(nameOf({ origin })).toEqual({ name: 'bench 3', isNamed: false });
    expect(nameOf({ origin: { ...origin, kind: 'lesson' }, title: ' ' })).toEqual({
      name: 'bench 3',
      isNamed: false,
    });
  });

  it('is what somebody typed, even if the page might have called it so', () => {
    expect(nameOf({ title: 'Ada and Ben' })).toEqual({ name: 'Ada and Ben', isNamed: true });
    expect(nameOf({ title: 'Experiment 2' })).toEqual({ name: 'Experiment 2', isNamed: true });
    // A copy is the same group's; what the page calls it depends on the language.
    expect(nameOf({ title: 'Ada', origin })).toEqual({ name: 'Ada', isNamed: true });
  });
});

describe('a group’s marks', () => {
  it('go by the numbers that the group’s page shows, after one was deleted, too', () => {
    const at = (second: number) => ({ createdAt: `2030-03-01T10:00:0${second}.000Z` });
    const experiment = {
      ...exampleExperiment([
        exampleMark('second', { lengthM: 0.4925, ...at(2) }),
        exampleMark('third', { lengthM: 0.8271, ...at(3) }),
      ]),
      deletedMarks: [exampleMark('first', { lengthM: 0.3, ...at(1) })],
    };
    const content = { kind: 'experiment', experiment } as const;
    const [group] = groupsOfIntake({ name: 'x.json', content, faults: [], remarks: [] });
    expect([...(group?.markNumbers ?? [])]).toEqual([
      ['second', 2],
      ['third', 3],
    ]);
  });
});
