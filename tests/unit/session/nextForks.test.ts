import { describe, expect, it } from 'vitest';
import { newFork } from '../../../src/notebook/newExperiment.ts';
import { nextMarksHere } from '../../../src/session/experiment/nextMarks.ts';
import { exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';

describe('what to measure next', () => {
  // Any two resonances serve.
  const marks = [exampleMark('a', { lengthM: 0.158 }), exampleMark('b', { lengthM: 0.4925 })];
  const two = exampleExperiment(marks);
  const experiment = { ...two, forks: [...two.forks, newFork('fork-2', 480), newFork('fork-3', 1024)] };
  const pitches = (of: typeof experiment) =>
    [...new Set(nextMarksHere(of).map(({ frequencyHz }) => frequencyHz))].sort((one, other) => one - other);

  it('names forks in use only: with a mark, or chosen now', () => {
    expect(pitches(experiment)).toEqual([512]);
    expect(pitches({ ...experiment, present: { ...experiment.present, forkId: 'fork-2' } })).toEqual([
      480, 512,
    ]);
  });
});
