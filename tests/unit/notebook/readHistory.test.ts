import { describe, expect, it } from 'vitest';
import { beginHistory, recordStep, undoStep } from '../../../src/notebook/history.ts';
import { readExperiment } from '../../../src/notebook/readExperiment.ts';
import type { ReadItems } from '../../../src/notebook/readExperiment.ts';
import { readHistory } from '../../../src/notebook/readHistory.ts';
import { exampleExperiment, exampleMark } from './exampleExperiment.ts';
import { mendedNote } from '../../../src/words/mended.ts';
import { recordFaultWords } from '../../../src/words/recordFaults.ts';

const first = exampleExperiment();
const second = { ...first, marks: [exampleMark('a', { lengthM: 0.158 })] };
const third = { ...second, marks: [...second.marks, exampleMark('b')] };
const history = undoStep(
  recordStep(
    recordStep(recordStep(beginHistory(first), second, 'add mark'), third, 'add mark'),
    first,
    'clear',
  ),
);

function read(stored: unknown) {
  const readItems: ReadItems = new WeakMap();
  const { present, past, future } = structuredClone({ ...history, ...(stored as object) });
  const reading = readExperiment(present, readItems);
  if (reading.kind === 'faults') throw new Error(reading.faults.map(recordFaultWords).join(' '));
  return readHistory({ past, future }, reading.experiment, mendedNote, readItems);
}

describe('readHistory', () => {
  it('gives the steps back, with unchanged marks shared between them', () => {
    const back = read({});
    expect(back).toEqual(history);
    expect(back.past[1]?.value.marks[0]).toBe(back.present.marks[0]);
  });

  it('gives up a step that can’t be read with all beyond it, never the state', () => {
    const past = [history.past[0], { value: { ...second, title: 7 }, step: 'rename' }, history.past[1]];
    const back = read({ past });
    expect(back.present).toEqual(third);
    expect(back.past).toEqual([history.past[1]]);
  });

  it('begins anew where there are no steps at all', () => {
    expect(readHistory(null, first, mendedNote, new WeakMap())).toEqual(beginHistory(first));
    expect(readHistory({ past: 'none' }, first, mendedNote, new WeakMap())).toEqual(beginHistory(first));
  });

  it('takes over no steps of another experiment', () => {
    const past = [{ value: { ...first, id: 'other' }, step: 'open file' }];
    expect(read({ past }).past).toEqual([]);
  });
});
