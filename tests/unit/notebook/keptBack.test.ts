import { describe, expect, it } from 'vitest';
import type { Lesson } from '../../../src/notebook/experiment.ts';
import { keepsBack, shownPlaces, underLesson } from '../../../src/notebook/keptBack.ts';
import { exampleExperiment } from './exampleExperiment.ts';

const open: Lesson = { task: 'Find three.', hideExpected: false, hideTheory: false, hideTruth: false };
const hiding: Lesson = { ...open, hideTheory: true, reveal: '00c0ffee' };

describe('what is begun or brought in while a lesson is open', () => {
  it('keeps back what the lesson keeps back, with the code that shows it', () => {
    expect(underLesson(exampleExperiment(), hiding).lesson).toEqual(hiding);
  });

  it('can’t be freed of it by a file whose lesson hides less, nor loses what its own hides', () => {
    const own = { ...open, task: 'My own task.', hideTruth: true };
    expect(underLesson({ ...exampleExperiment(), lesson: own }, hiding).lesson).toEqual({
      ...hiding,
      task: 'My own task.',
      hideTruth: true,
    });
  });

  it('is left alone where nothing is kept back', () => {
    const plain = exampleExperiment();
    expect(underLesson(plain, open)).toBe(plain);
    expect(underLesson(plain, undefined)).toBe(plain);
    expect([open, hiding, undefined].map(keepsBack)).toEqual([false, true, false]);
  });
});

describe('places of resonances in the picture', () => {
  const shown = (lesson: Partial<Lesson>, basis: 'measured' | 'theory', isSounding: boolean): string => {
    const { expected, wave } = shownPlaces(
      { ...exampleExperiment(), lesson: { ...open, ...lesson } },
      basis,
      isSounding,
    );
    return [expected ? 'places' : '', wave ? 'wave' : ''].join(' ').trim();
  };

  it('of theory are theory: they go with either', () => {
    for (const isSounding of [false, true]) {
      expect(shown({}, 'theory', isSounding)).toBe('places wave');
      expect(shown({ hideTheory: true }, 'theory', isSounding)).toBe('');
      expect(shown({ hideExpected: true, hideTheory: true }, 'theory', isSounding)).toBe('');
      expect(shown({ hideExpected: true }, 'theory', isSounding)).toBe('');
    }
  });

  it('of what the group measured stay where theory is hidden, and show themselves by ear only where places are', () => {
    expect(shown({ hideTheory: true }, 'measured', false)).toBe('places wave');
    expect(shown({ hideExpected: true }, 'measured', false)).toBe('');
    expect(shown({ hideExpected: true }, 'measured', true)).toBe('wave');
  });
});
