import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Mark } from '../../../src/marks/mark.ts';
import { MarkIndex } from '../../../src/marks/markIndex.ts';
import { exampleMark } from '../notebook/exampleExperiment.ts';
import { cpuMs } from '../../support/cpuMs.ts';

/** The definition, word for word: a mark without a length repeats what the chain of `repeatOf` ends at, if it ends. */
function repeatedByDefinition(marks: readonly Mark[], mark: Mark): Mark | null {
  const passed = [mark];
  for (;;) {
    const last = passed.at(-1) as Mark;
    const next = last.lengthM === null ? marks.find((other) => other.id === last.repeatOf) : undefined;
    if (next === undefined) return last === mark ? null : last;
    if (passed.includes(next)) return null;
    passed.push(next);
  }
}

/** Up to 12 marks that repeat each other in any way, in circles and themselves, too. */
const anyMarks = fc.integer({ min: 1, max: 12 }).chain((count) =>
  fc
    .array(fc.record({ hasLength: fc.boolean(), of: fc.integer({ min: -3, max: count }) }), {
      minLength: count,
      maxLength: count,
    })
    .map((list) =>
      list.map(({ hasLength, of }, i) =>
        exampleMark(`m${i}`, {
          lengthM: hasLength ? 0.1 : null,
          ...(of < 0 ? {} : { repeatOf: `m${of}` }),
        }),
      ),
    ),
);

describe('MarkIndex', () => {
  it('tells repeats, numbers and own marks as they are defined, in any tangle', () => {
    fc.assert(
      fc.property(anyMarks, (marks) => {
        const index = new MarkIndex(marks);
        const own = marks.filter((mark) => repeatedByDefinition(marks, mark) === null);
        expect(index.own).toEqual(own);
        for (const mark of marks) {
          const repeated = repeatedByDefinition(marks, mark);
          expect(index.repeated(mark)).toBe(repeated);
          expect(index.numberOf(mark.id)).toBe(own.indexOf(repeated ?? mark) + 1);
          expect(index.repeatsOf(mark)).toEqual(
            marks.filter((other) => repeatedByDefinition(marks, other) === mark),
          );
        }
      }),
    );
  });

  it('has no number for what is not there', () => {
    const index = new MarkIndex([exampleMark('a')]);
    expect([index.numberOf('x'), index.find('x')]).toEqual([0, null]);
  });

  it('takes as much more work as there are more marks, where each repeats the one before', () => {
    const chain = (count: number): Mark[] =>
      Array.from({ length: count }, (_, i) => exampleMark(`m${i}`, i === 0 ? {} : { repeatOf: `m${i - 1}` }));
    const workMs = (count: number): number => {
      const marks = chain(count);
      const begun = cpuMs();
      for (let round = 0; round < 200_000 / count; round += 1) {
        const index = new MarkIndex(marks);
        expect(index.numberOf(`m${count - 1}`)).toBe(1);
        expect(index.repeatsOf(marks[0])).toHaveLength(count - 1);
      }
      return cpuMs() - begun;
    };
    workMs(100);
    // The same number of marks in all: work that grows with the square would be forty times as much.
    expect(workMs(5000)).toBeLessThan(8 * workMs(125));
  });
});
