import { describe, expect, it } from 'vitest';
import type { Experiment } from '../../../src/notebook/experiment.ts';
import { LengthTurn } from '../../../src/session/lengthTurn.ts';
import { exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';

/** Marks a, b, c wait, oldest first. */
function turnOf(change: { latest?: string; marks?: Experiment['marks'] } = {}) {
  const state = {
    experiment: exampleExperiment(change.marks ?? ['a', 'b', 'c'].map((id) => exampleMark(id))),
    latest: change.latest ?? null,
    changes: 0,
  };
  const turn = new LengthTurn({
    experiment: () => state.experiment,
    latestMark: () => state.latest,
    onChange: () => (state.changes += 1),
  });
  return { turn, state };
}

describe('whose length is typed next', () => {
  it('is the newest mark’s that waits, or the one’s to which the way back leads', () => {
    expect(turnOf().turn.mark?.id).toBe('c');
    expect(turnOf({ latest: 'a' }).turn.mark?.id).toBe('a');
  });

  it('is nobody’s where none waits: left out, a mark doesn’t', () => {
    const marks = [exampleMark('a', { lengthM: 0.158 }), exampleMark('b', { excluded: true })];
    expect(turnOf({ marks }).turn.mark).toBeNull();
  });

  it('goes on to the next older one without a length, too, and from the oldest to the newest', () => {
    const { turn } = turnOf();
    turn.goOn('c');
    expect(turn.mark?.id).toBe('b');
    turn.goOn('a');
    expect(turn.mark?.id).toBe('c');
  });

  it('stays where the keyboard is while another resonance passes, and goes there when the hand leaves', () => {
    const { turn, state } = turnOf();
    turn.hold();
    state.experiment = { ...state.experiment, marks: [...state.experiment.marks, exampleMark('d')] };
    state.latest = 'd';
    expect(turn.mark?.id).toBe('c');
    turn.release();
    expect(turn.mark?.id).toBe('d');
    expect(state.changes).toBe(1);
  });

  it('stays a new mark’s while one is typed', () => {
    const { turn, state } = turnOf({ marks: [] });
    turn.hold();
    state.experiment = exampleExperiment([exampleMark('a')]);
    expect(turn.mark).toBeNull();
  });
});
