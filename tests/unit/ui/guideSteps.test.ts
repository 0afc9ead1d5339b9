import { describe, expect, it } from 'vitest';
import { PracticeRun } from '../../../src/session/hearing/practiceRun.ts';
import type { PracticeDeeds } from '../../../src/session/hearing/practiceRun.ts';
import { noteReadings } from '../../../src/session/hearing/practiceReadings.ts';
import { guideSays, guideSteps } from '../../../src/ui/stage/guideSteps.ts';
import type { Experiment } from '../../../src/notebook/experiment.ts';
import { waitingMarks } from '../../../src/notebook/markList.ts';
import { words } from '../../../src/words/inUse.ts';
import { EXAMPLE_EVIDENCE, exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';

const fresh = exampleExperiment();
const { readings } = new PracticeRun(fresh, 1);

function says(experiment: Experiment, deeds: PracticeDeeds, isListening = true) {
  const steps = guideSteps(experiment, deeds, isListening, readings);
  return guideSays(steps, deeds, isListening, waitingMarks(experiment).length > 0);
}

const waiting = (id: string) => exampleMark(id, { evidence: EXAMPLE_EVIDENCE });
const typed = (id: string, lengthM: number) => exampleMark(id, { lengthM, evidence: EXAMPLE_EVIDENCE });

/** Renders and looks as a page does, 20 times a second. */
function run(practice: PracticeRun, seconds: number): void {
  for (let i = 0; i < 20 * seconds; i += 1) {
    practice.column.render(2400);
    practice.observe();
  }
}

describe('the guide on the practice column', () => {
  it('goes by what the hands did: listen, strike, slide past all, back, type', () => {
    const practice = new PracticeRun(fresh, 1);
    expect(says(fresh, practice.deeds, false)).toBe('listen');
    expect(says(fresh, practice.deeds)).toBe('strike');
    run(practice, 1);
    expect(says(fresh, practice.deeds)).toBe('strike');
    practice.strike();
    run(practice, 0.1);
    expect(says(fresh, practice.deeds)).toBe('slide');

    const [first] = practice.resonances;
    practice.slideTo(practice.column.apparatus.longestM, true);
    run(practice, 10);
    const marked = exampleExperiment([waiting('a'), waiting('b')]);
    // The slide goes on: nobody is told to turn back yet.
    expect(says(marked, practice.deeds)).toBe('slide');
    run(practice, 14);
    practice.strike();
    run(practice, 1);
    expect(practice.column.isSliding).toBe(false);
    expect(says(marked, practice.deeds)).toBe('back');
    expect(says(exampleExperiment([waiting('a')]), practice.deeds)).toBe('slideAgain');

    practice.slideTo(first.lengthM, true);
    run(practice, 23);
    expect(practice.column.isSliding).toBe(false);
    expect(says(marked, practice.deeds)).toBe('type');
    const one = exampleExperiment([typed('a', first.lengthM), waiting('b')]);
    practice.strike();
    run(practice, 1);
    expect(says(one, practice.deeds)).toBe('rest');
    const two = exampleExperiment([typed('a', first.lengthM), typed('b', practice.resonances[1].lengthM)]);
    expect(says(two, practice.deeds)).toBe('read');
    expect(says(noteReadings(two, readings, 'place-2'), practice.deeds)).toBeNull();
  });

  it('says strike again where the fork was damped or has died, and the way back stays', () => {
    const practice = new PracticeRun(fresh, 1);
    practice.strike();
    run(practice, 1);
    expect(says(fresh, practice.deeds)).toBe('slide');
    practice.column.damp();
    run(practice, 1);
    expect(says(fresh, practice.deeds)).toBe('faintSliding');
    practice.strike();
    run(practice, 1);
    const one = exampleExperiment([typed('a', 0.157), waiting('b')]);
    expect(says(one, practice.deeds)).toBe('rest');
    // Twice the decay time of 12 s.
    run(practice, 24);
    expect(says(one, practice.deeds)).toBe('faint');
  });

  it('says slide on, not back, to whoever typed the first mark before there is another', () => {
    const practice = new PracticeRun(fresh, 1);
    const one = exampleExperiment([typed('a', practice.resonances[0].lengthM)]);
    practice.strike();
    run(practice, 1);
    expect(says(one, practice.deeds)).toBe('slide');
    practice.column.damp();
    run(practice, 1);
    expect(says(one, practice.deeds)).toBe('faintSliding');
    practice.strike();
    practice.slideTo(practice.column.apparatus.longestM, true);
    run(practice, 24);
    // All were passed, and none was marked.
    expect(says(one, practice.deeds)).toBe('slideAgain');
    expect(says({ ...one, marks: [...one.marks, waiting('b')] }, practice.deeds)).not.toBe('slideAgain');
  });

  it('wants one resonance only where the tube has no more', () => {
    const deeds = {
      isStruck: true,
      isForkFresh: true,
      resonances: 1,
      hasPassedAll: true,
      isAtResonance: false,
    };
    expect(says(exampleExperiment([waiting('a')]), deeds)).toBe('back');
    expect(says(exampleExperiment([typed('a', 0.157)]), deeds)).toBe('read');
  });

  it('begins anew with another fork', () => {
    const practice = new PracticeRun(fresh, 1);
    practice.strike();
    const [fork] = fresh.forks;
    practice.follow({ ...fresh, forks: [{ ...fork, nominalHz: 384 }] });
    expect(practice.deeds.isStruck).toBe(false);
  });

  // 390 px hold about 48 letters a line, of which “Guide, 2 of 7: ” takes 15 in the first of two.
  it.each(Object.entries(words.guide.says))('%s fits two lines on a telephone', (_, text) => {
    expect(text.length).toBeLessThanOrEqual(78);
  });
});
