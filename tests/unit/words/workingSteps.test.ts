import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveExperiment } from '../../../src/session/experiment/solveExperiment.ts';
import { solve } from '../../../src/solver/solve.ts';
import type { Solution, SolverMark } from '../../../src/solver/solution.ts';
import { budgetQuantity } from '../../../src/words/budgetLines.ts';
import { workingStepWords } from '../../../src/words/workingSteps.ts';
import { makeExperiment, randomFrom, USUAL_MAKING } from '../../bench/solverExperiments.ts';
import { anyExperiment } from '../../support/anyExperiment.ts';
import { makeMarks, solved } from '../solver/makeMarks.ts';

/** What nobody would write by hand, and why. */
const UNSIGHTLY: readonly (readonly [string, RegExp])[] = [
  ['no number', /NaN|Infinity|undefined|null/],
  ['an exponent of the programming language', /\de[+-]?\d/],
  ['more digits than mean anything', /\d\.\d{7,}/],
  ['nothing squared', /[( ]0(\.0*)?²/],
  ['an empty root', /√\(\)/],
  ['two signs in a row', /[+−] −/],
  ['one of many', /\b1 (degrees|marks)\b/],
  ['a negative nothing', /−0(\.0+)?(?![\d.])/],
];

function expectSightly({ working, budget }: Solution): void {
  const texts = working
    .map(workingStepWords)
    .flatMap(({ title, numbers, result }) => [title, numbers, result]);
  for (const text of [...texts, ...budget.map(budgetQuantity)]) {
    for (const [what, pattern] of UNSIGHTLY) expect(text, what).not.toMatch(pattern);
  }
}

describe('the working in numbers', () => {
  it('is what a person would write, for any experiment of the page', () => {
    let count = 0;
    fc.assert(
      fc.property(anyExperiment, (experiment) => {
        for (const { solution } of solveExperiment(experiment).places) {
          if (solution.speedMps === null) continue;
          expectSightly(solution);
          count += 1;
        }
      }),
      { numRuns: 100 },
    );
    // About half of the experiments have a speed.
    expect(count).toBeGreaterThan(25);
  }, 60_000);

  it('is so for few marks, exact ones and pitches as measured', () => {
    const random = randomFrom(3);
    const changes: readonly ((mark: SolverMark) => Partial<SolverMark>)[] = [
      () => ({}),
      () => ({ frequencyStandardUncertaintyHz: 0, lengthStandardUncertaintyM: 1e-6 }),
      (mark) => ({ frequencyHz: mark.frequencyHz * 1.000123, radiusM: null, air: null }),
    ];
    let count = 0;
    for (let round = 0; round < 60; round += 1) {
      const { marks } = makeExperiment(random, { ...USUAL_MAKING, fewest: 1, most: 5 });
      for (const change of changes) {
        const solution = solve(marks.map((mark) => ({ ...mark, ...change(mark) })));
        if (solution.speedMps === null) continue;
        expectSightly(solution);
        count += 1;
      }
    }
    expect(count).toBeGreaterThan(150);
  }, 60_000);

  it('still adds up by hand: the squares written out give u to its two digits', () => {
    const { working } = solved(solve(makeMarks([{ hz: 512, orders: [1, 2, 3] }])));
    const step = working.map(workingStepWords).find(({ title }) => title === 'Standard uncertainty');
    const parts = [...(step?.numbers ?? '').matchAll(/([\d.]+)²/g)].map(([, part]) => Number(part));
    const u = Number(/[\d.]+/.exec(step?.result.replace('u = ', '') ?? '')?.[0]);
    expect(parts.length).toBeGreaterThan(1);
    expect(Math.abs(Math.hypot(...parts) / u - 1)).toBeLessThan(0.05);
  });

  it('still adds up by hand: one speed less the other is the difference that is shown', () => {
    const random = randomFrom(4);
    let count = 0;
    for (let round = 0; round < 40; round += 1) {
      const { working } = solved(solve(makeExperiment(random, USUAL_MAKING).marks));
      const step = working.map(workingStepWords).find(({ title }) => title.startsWith('Difference'));
      if (step === undefined) continue;
      const [own = NaN, theory = NaN] = [...step.numbers.matchAll(/\d+\.\d+/g)].map(Number);
      const shown = Number(/Δ = (−?[\d.]+)/.exec(step.result)?.[1]?.replace('−', '-'));
      expect(Math.abs(own - theory - shown)).toBeLessThan(0.0061);
      count += 1;
    }
    expect(count).toBeGreaterThan(20);
  });
});
