import { describe, expect, it } from 'vitest';
import {
  compareGroups,
  MOST_FOR_ALL_PAIRS,
  PAIRS_AT_A_TIME,
} from '../../../../src/session/experiment/comparedGroups.ts';
import { countedGroups } from '../../../../src/session/experiment/countedGroups.ts';
import { SolvedGroups } from '../../../../src/session/experiment/solvedGroups.ts';
import { compare } from '../../../../src/solver/compare.ts';
import { groupNames } from '../../../../src/words/comparison.ts';
import { largeExperiment } from '../../../support/largeExperiment.ts';

const ask = { by: 'place', oneId: null, from: 0 } as const;
const few = largeExperiment({ marks: 24, places: 4, forks: 2, seed: 1 });
const many = largeExperiment({ marks: 120, places: 40, forks: 2, seed: 2 });

describe('compareGroups', () => {
  it('compares every pair of a few groups, each as if it were compared alone', () => {
    const found = compareGroups(few, ask);
    expect(found.oneId).toBeNull();
    expect(found.pairCount).toBe(6);
    const groups = [...countedGroups(few, 'place')].map(([key, marks]) => ({ key, marks }));
    const alone = groups.flatMap((one, i) => groups.slice(i + 1).map((other) => compare(one, other)));
    expect(found.pairs).toEqual(alone);
  });

  it('sets one of many against the others, some at a time, and counts what is left', () => {
    const first = compareGroups(many, ask);
    expect(first.groupIds).toHaveLength(40);
    expect(first.oneId).toBe('place-1');
    expect(first.pairCount).toBe(39);
    expect(first.pairs).toHaveLength(PAIRS_AT_A_TIME);
    const rest = compareGroups(many, { ...ask, from: PAIRS_AT_A_TIME });
    expect(rest.pairs).toHaveLength(39 - PAIRS_AT_A_TIME);
    const names = [...first.pairs, ...rest.pairs].map((pair) =>
      pair.differenceMps === null ? '' : `${pair.one}, ${pair.other}`,
    );
    expect(new Set(names).size).toBe(39);
    expect(names.every((name) => name.startsWith('place-1, '))).toBe(true);
  });

  it('takes the one that is asked for, and the first where that is gone or the pages ended', () => {
    const seventh = compareGroups(many, { ...ask, oneId: 'place-7' });
    expect(seventh.oneId).toBe('place-7');
    const [pair] = seventh.pairs;
    expect(pair?.differenceMps === null ? null : [pair?.one, pair?.other]).toEqual(['place-7', 'place-1']);
    expect(compareGroups(many, { ...ask, oneId: 'gone', from: 500 })).toMatchObject({
      oneId: 'place-1',
      from: 0,
    });
  });

  it('compares forks and ends in the same way, and all pairs up to the limit', () => {
    const forks = compareGroups(few, { ...ask, by: 'fork' }).groupIds;
    expect(forks.map(groupNames(few, 'fork'))).toEqual(['512 Hz fork', '480 Hz fork']);
    const ends = compareGroups(few, { ...ask, by: 'ends' }).groupIds;
    expect(ends).toEqual(['closed']);
    expect(ends.map(groupNames(few, 'ends'))).toEqual(['closed column']);
    const six = largeExperiment({ marks: 24, places: MOST_FOR_ALL_PAIRS, forks: 1, seed: 3 });
    expect(compareGroups(six, ask).pairs).toHaveLength(15);
  });

  it('solves each group once, whatever is asked of it, and again only when its marks change', () => {
    const known = new SolvedGroups();
    const marks = countedGroups(many, 'place').get('place-2') ?? [];
    compareGroups(many, ask, known);
    const solved = known.solve('place', 'place-2', marks);
    compareGroups(many, { ...ask, oneId: 'place-2' }, known);
    expect(known.solve('place', 'place-2', structuredClone(marks))).toBe(solved);
    const longer = marks.map((mark, i) => (i === 0 ? { ...mark, lengthM: mark.lengthM + 0.001 } : mark));
    expect(known.solve('place', 'place-2', longer)).not.toBe(solved);
    const warmer = longer.map((mark) => ({
      ...mark,
      air: mark.air === null ? null : { ...mark.air, temperatureC: mark.air.temperatureC + 1 },
    }));
    expect(known.solve('place', 'place-2', warmer)).not.toBe(known.solve('place', 'place-2', marks));
  });

  it('forgets groups that are gone', () => {
    const known = new SolvedGroups();
    const marks = countedGroups(many, 'place').get('place-2') ?? [];
    const solved = known.solve('place', 'place-2', marks);
    compareGroups(few, { ...ask, by: 'fork' }, known);
    expect(known.solve('place', 'place-2', marks)).toBe(solved);
    known.keepOnly('place', new Set(['place-1']));
    expect(known.solve('place', 'place-2', marks)).not.toBe(solved);
  });
});
