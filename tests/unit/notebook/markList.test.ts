import { describe, expect, it } from 'vitest';
import {
  addMark,
  changeSetup,
  deleteMark,
  editMark,
  joinable,
  likelyRepeated,
  markNumber,
  marksOfSetup,
  nextWaitingMark,
  ownMarks,
  repeatsOf,
  restoreMark,
  waitingMarks,
} from '../../../src/notebook/markList.ts';
import { MarkIndex } from '../../../src/marks/markIndex.ts';
import { exampleExperiment, exampleMark } from './exampleExperiment.ts';

const ids = (marks: readonly { id: string }[]): string[] => marks.map((mark) => mark.id);

describe('marks of an experiment', () => {
  it('adds at the end and leaves the experiment before as it was', () => {
    const before = exampleExperiment([exampleMark('a')]);
    const after = addMark(before, exampleMark('b', { lengthM: 0.158 }));
    expect(ids(after.marks)).toEqual(['a', 'b']);
    expect(ids(before.marks)).toEqual(['a']);
  });

  it('refuses an id that is there already and a length that is none', () => {
    const experiment = exampleExperiment([exampleMark('a')]);
    expect(() => addMark(experiment, exampleMark('a'))).toThrow(RangeError);
    for (const lengthM of [0, -0.1, NaN, Infinity]) {
      expect(() => editMark(experiment, 'a', { lengthM })).toThrow(/lengthM must be above 0/);
    }
  });

  it('deletes without losing: the mark comes back to its place in time', () => {
    const marks = ['a', 'b', 'c'].map((id, index) =>
      exampleMark(id, { createdAt: `2030-03-01T10:00:0${index}.000Z`, lengthM: 0.1 + index / 10 }),
    );
    const deleted = deleteMark(exampleExperiment(marks), 'b');
    expect(ids(deleted.marks)).toEqual(['a', 'c']);
    expect(ids(deleted.deletedMarks)).toEqual(['b']);
    const restored = restoreMark(deleted, 'b');
    expect(restored.marks).toEqual(marks);
    expect(restored.deletedMarks).toEqual([]);
  });

  it('gives the very same experiment where a change leaves all as it is, which is no step to undo', () => {
    const before = editMark(exampleExperiment([exampleMark('a')]), 'a', { lengthM: 0.2, note: 'loud' });
    expect(editMark(before, 'a', { lengthM: 0.2, note: 'loud' })).toBe(before);
    expect(editMark(before, 'a', { lengthM: 0.2, note: 'soft' })).not.toBe(before);
  });

  it('refuses to edit, delete or bring back what is not there', () => {
    const experiment = exampleExperiment([exampleMark('a')]);
    expect(() => editMark(experiment, 'x', { note: 'n' })).toThrow(RangeError);
    expect(() => deleteMark(experiment, 'x')).toThrow(RangeError);
    expect(() => restoreMark(experiment, 'a')).toThrow(RangeError);
  });

  it('lets lengths be typed from the newest to the oldest, and starts again at the newest', () => {
    const experiment = exampleExperiment([
      exampleMark('a'),
      exampleMark('b', { lengthM: 0.2 }),
      exampleMark('c'),
      exampleMark('d'),
    ]);
    expect(ids(waitingMarks(experiment))).toEqual(['d', 'c', 'a']);
    expect(nextWaitingMark(experiment, 'd')?.id).toBe('c');
    expect(nextWaitingMark(experiment, 'c')?.id).toBe('a');
    expect(nextWaitingMark(experiment, 'a')?.id).toBe('d');
    const onlyLast = editMark(editMark(experiment, 'c', { lengthM: 0.3 }), 'd', { lengthM: 0.4 });
    expect(nextWaitingMark(onlyLast, 'a')).toBeNull();
  });
});

describe('repeats of one resonance', () => {
  const experiment = exampleExperiment([
    exampleMark('a'),
    exampleMark('b', { repeatOf: 'a' }),
    exampleMark('c'),
    exampleMark('other fork', { forkId: 'fork-2' }),
  ]);
  const { marks } = experiment;

  it('need no length and go by the number of their mark', () => {
    expect(ids(ownMarks(marks))).toEqual(['a', 'c', 'other fork']);
    expect(ids(waitingMarks(experiment))).toEqual(['other fork', 'c', 'a']);
    expect(ids(repeatsOf(marks, 'a'))).toEqual(['b']);
    expect(['a', 'b', 'c', 'other fork', 'none'].map((id) => markNumber(experiment, id))).toEqual([
      1, 1, 2, 3, 0,
    ]);
    expect(nextWaitingMark(experiment, 'c')?.id).toBe('a');
  });

  it('leave the others’ numbers as they are when they go', () => {
    const at = (minute: number) => `2030-03-01T10:0${minute}:00.000Z`;
    const four = exampleExperiment([
      exampleMark('a', { createdAt: at(0) }),
      exampleMark('b', { createdAt: at(1) }),
      exampleMark('again', { createdAt: at(2), repeatOf: 'b' }),
      exampleMark('c', { createdAt: at(3) }),
    ]);
    const without = deleteMark(four, 'b');
    expect(['a', 'c'].map((id) => markNumber(without, id))).toEqual([1, 3]);
    expect(['a', 'b', 'c'].map((id) => markNumber(restoreMark(without, 'b'), id))).toEqual([1, 2, 3]);
  });

  it('go along where the fork or the ends of their mark are repaired', () => {
    const repaired = changeSetup(experiment, ['a', 'c'], { ends: 'open' });
    expect(repaired.marks.map(({ ends }) => ends)).toEqual(['open', 'open', 'open', 'closed']);
    expect(ids(marksOfSetup(repaired, { ...experiment.present, ends: 'open' }))).toEqual(['a', 'c']);
  });

  it('go and come back with their mark', () => {
    const deleted = deleteMark(experiment, 'a');
    expect(ids(deleted.marks)).toEqual(['c', 'other fork']);
    expect(restoreMark(deleted, 'a').marks).toHaveLength(4);
  });

  it('stand for themselves once their mark is missing, or when they are separated', () => {
    expect(ids(ownMarks(marks.slice(1)))).toContain('b');
    expect(ids(ownMarks(editMark(experiment, 'b', { repeatOf: null }).marks))).toContain('b');
  });

  it('of a repeat belong to the mark behind both, wherever that goes', () => {
    const chain = exampleExperiment([
      exampleMark('a'),
      exampleMark('b', { repeatOf: 'a' }),
      exampleMark('c', { repeatOf: 'b' }),
      exampleMark('d'),
    ]);
    expect(ids(repeatsOf(chain.marks, 'a'))).toEqual(['b', 'c']);
    expect(chain.marks.map(({ id }) => markNumber(chain, id))).toEqual([1, 1, 1, 2]);
    const deleted = deleteMark(chain, 'a');
    expect(ids(deleted.deletedMarks)).toEqual(['a', 'b', 'c']);
    expect(ids(restoreMark(deleted, 'a').marks).sort()).toEqual(ids(chain.marks));
  });

  it('are none where they have a length of their own, or lead in a circle', () => {
    const marks = [
      exampleMark('a'),
      exampleMark('b', { repeatOf: 'a', lengthM: 0.5 }),
      exampleMark('c', { repeatOf: 'd' }),
      exampleMark('d', { repeatOf: 'c' }),
      exampleMark('e', { repeatOf: 'e' }),
    ];
    const circles = exampleExperiment(marks);
    expect(marks.map(({ id }) => markNumber(circles, id))).toEqual([1, 2, 3, 4, 5]);
  });

  it('may be of the newest older mark of the same fork, ends and place', () => {
    expect(likelyRepeated(marks, marks[2])?.id).toBe('a');
    expect(likelyRepeated(marks, marks[3])).toBeNull();
  });

  it('offers every mark of the same fork, ends and place to be joined with, newest first, and no repeat', () => {
    const marks = [
      exampleMark('a', { lengthM: 0.158 }),
      exampleMark('b'),
      exampleMark('again', { repeatOf: 'b' }),
      exampleMark('open', { ends: 'open' }),
      exampleMark('c'),
    ];
    const offered = (id: string) => {
      const mark = marks.find((one) => one.id === id);
      if (mark === undefined) throw new Error('it is there');
      return ids(joinable(new MarkIndex(marks), mark));
    };
    expect(offered('c')).toEqual(['b', 'a']);
    expect(offered('b')).toEqual(['c', 'a']);
    expect(offered('open')).toEqual([]);
  });
});
