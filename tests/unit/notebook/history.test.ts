import { describe, expect, it } from 'vitest';
import { amendHistory, beginHistory, recordStep, redoStep, undoStep } from '../../../src/notebook/history.ts';

describe('history', () => {
  it('undoes and redoes step by step, with the name of each step', () => {
    const history = recordStep(recordStep(beginHistory(1), 2, 'two'), 3, 'three');
    const once = undoStep(history);
    expect(once.present).toBe(2);
    expect(once.future.at(-1)?.step).toBe('three');
    expect(undoStep(once).present).toBe(1);
    expect(redoStep(once)).toEqual(history);
  });

  it('stays where it is when there is nothing to undo or redo', () => {
    const history = beginHistory('only');
    expect(undoStep(history)).toBe(history);
    expect(redoStep(history)).toBe(history);
  });

  it('forgets what was undone once something new is done', () => {
    const history = recordStep(undoStep(recordStep(beginHistory(1), 2, 'two')), 5, 'five');
    expect(redoStep(history).present).toBe(5);
    expect(undoStep(history).present).toBe(1);
  });

  it('keeps the last 200 steps', () => {
    let history = beginHistory(0);
    for (let value = 1; value <= 250; value += 1) history = recordStep(history, value, String(value));
    expect(history.past).toHaveLength(200);
    expect(history.past[0]?.value).toBe(50);
  });

  it('amends every state, and leaves steps alone that do not change', () => {
    const history = undoStep(recordStep(recordStep(beginHistory(1), 20, 'two'), 30, 'three'));
    const amended = amendHistory(history, (value) => (value >= 20 ? value + 1 : value));
    expect([amended.past[0]?.value, amended.present, amended.future[0]?.value]).toEqual([1, 21, 31]);
    expect(amended.past[0]).toBe(history.past[0]);
  });
});
