import { describe, expect, it } from 'vitest';
import type { Experiment } from '../../../../src/notebook/experiment.ts';
import { FlagMarking } from '../../../../src/session/hearing/flagMarking.ts';
import { RecentLevels } from '../../../../src/session/hearing/recentLevels.ts';
import type { Resonance } from '../../../../src/session/hearing/listeningTypes.ts';
import { flagAt } from '../../../support/nothingHeard.ts';
import { EXAMPLE_TIME, exampleExperiment } from '../../notebook/exampleExperiment.ts';

/** A bench without marks, and what makes them of flags there. */
function bench(source: 'microphone' | 'recording' = 'microphone') {
  let experiment: Experiment = { ...exampleExperiment(), marks: [] };
  let ids = 0;
  const told: string[] = [];
  const marking = new FlagMarking(source, new RecentLevels(), {
    now: () => EXAMPLE_TIME,
    newId: () => `mark-${(ids += 1)}`,
    experiment: () => experiment,
    change: (_step, make) => {
      experiment = make(experiment);
      return true;
    },
    amend: () => undefined,
    onMark: () => undefined,
    doubts: () => [],
    reasonOf: () => 'a reason',
    tell: (_kind, { code }) => told.push(code),
  });
  const marked = () =>
    experiment.marks.map(({ evidence, repeatOf }) => [evidence?.timeS, repeatOf !== undefined]);
  return { marking, marked, told };
}

const maybe = (timeS: number, change: Partial<Resonance> = {}): Resonance =>
  flagAt(timeS, { certainty: 'maybe', confidence: 0.6, soundingIndex: 1, ...change });
const sure = (timeS: number, change: Partial<Resonance> = {}): Resonance =>
  flagAt(timeS, { soundingIndex: 1, ...change });

describe('a flag that may be a resonance', () => {
  it('is no mark, asks for no length and says that it may be one', () => {
    const { marking, marked, told } = bench();
    marking.take(maybe(4));
    expect(marked()).toEqual([]);
    expect(told).toEqual(['resonance-maybe']);
    expect(marking.maybes.map(({ resonance }) => resonance.timeS)).toEqual([4]);
    expect(marking.withheld).toEqual([]);
  });

  it('in a recording is told with all that was found, not one by one', () => {
    const { marking, told } = bench('recording');
    marking.take(maybe(4, { slide: 'longer' }));
    marking.take(maybe(6, { slide: 'shorter' }));
    expect(told).toEqual([]);
  });

  it('is a mark when a person says so, and then asks for its length', () => {
    const { marking, marked, told } = bench();
    marking.take(maybe(4));
    expect(marking.hasMarkedMaybe(4)).toBe(false);
    marking.letIn(marking.maybes);
    expect(marked()).toEqual([[4, false]]);
    expect(marking.maybes).toEqual([]);
    expect(marking.hasMarkedMaybe(4)).toBe(true);
    expect(told).toEqual(['resonance-maybe', 'resonance-flagged']);
  });

  it('is a mark when it recurs on the way back, however unsure, and the way back its repeat', () => {
    const { marking, marked, told } = bench();
    marking.take(maybe(4, { slide: 'longer' }));
    marking.take(maybe(6, { slide: 'shorter' }));
    expect(marked()).toEqual([
      [4, false],
      [6, true],
    ]);
    expect(marking.maybes).toEqual([]);
    expect(told).toEqual(['resonance-maybe', 'resonance-flagged']);
  });

  it('is a mark when it recurs after a new strike, where the column was followed around it', () => {
    const { marking, marked } = bench();
    marking.take(maybe(4));
    marking.take(maybe(12, { soundingIndex: 2, isFollowed: true }));
    expect(marked()).toEqual([
      [4, false],
      [12, true],
    ]);
  });

  it('isn’t met again by the way back through what was passed after it', () => {
    const { marking, marked } = bench();
    marking.take(maybe(4, { slide: 'longer' }));
    marking.take(sure(6, { slide: 'longer' }));
    marking.take(sure(8, { slide: 'shorter' }));
    expect(marked()).toEqual([
      [6, false],
      [8, true],
    ]);
    expect(marking.maybes.map(({ resonance }) => resonance.timeS)).toEqual([4]);
  });

  it('that is kept later isn’t what the slide comes back through', () => {
    const { marking, marked } = bench();
    marking.take(maybe(4, { slide: 'longer' }));
    marking.take(sure(6, { slide: 'longer' }));
    const [six] = marked();
    marking.letIn(marking.maybes);
    expect(marking.latestMark).toBe('mark-2');
    marking.take(sure(8, { slide: 'shorter' }));
    expect(six).toEqual([6, false]);
    expect(marked()).toEqual([
      [6, false],
      [4, false],
      [8, true],
    ]);
    expect(marking.latestMark).toBe('mark-2');
  });

  it('stays one where the slide goes on, or the fork was struck again', () => {
    const { marking, marked } = bench();
    marking.take(maybe(4, { slide: 'longer' }));
    marking.take(sure(6, { slide: 'longer' }));
    marking.take(maybe(12, { slide: 'shorter', soundingIndex: 2 }));
    expect(marked()).toEqual([[6, false]]);
    expect(marking.maybes).toHaveLength(2);
  });

  it('repeats a sure one on the way back', () => {
    const { marking, marked } = bench();
    marking.take(sure(4, { slide: 'longer' }));
    marking.take(maybe(6, { slide: 'shorter' }));
    expect(marked()).toEqual([
      [4, false],
      [6, true],
    ]);
  });

  it('gives way to the sure flag of the same passage', () => {
    const { marking, marked } = bench();
    marking.take(maybe(4));
    marking.take(sure(4.1, { maybeS: 4 }));
    expect(marked()).toEqual([[4.1, false]]);
    expect(marking.maybes).toEqual([]);
  });

  it('is marked once where it was kept before it became sure', () => {
    const { marking, marked } = bench();
    marking.take(maybe(4));
    marking.letIn(marking.maybes);
    marking.take(sure(8));
    marking.take(sure(4.1, { maybeS: 4 }));
    expect(marked()).toEqual([
      [4, false],
      [8, false],
    ]);
  });
});
