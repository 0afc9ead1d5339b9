import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stepsWithoutTheory } from '../../../src/report/hideTheory.ts';
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
    .flatMap(({ title, numbers, result, why }) => [title, numbers, result, why ?? '']);
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

  it('says why with the experiment’s own numbers, each with a source', () => {
    const marks = makeMarks([{ hz: 512, orders: [1, 2, 3] }], { locatedBy: 'loudest' });
    const steps = solved(solve(marks)).working;
    const whyOf = (kind: (typeof steps)[number]['kind']): string =>
      steps.filter((step) => step.kind === kind).map((step) => workingStepWords(step).why ?? '')[0] ?? '';
    const whys = steps.map((step) => workingStepWords(step).why).filter((why) => why !== null);
    expect(whys.length).toBeGreaterThan(6);
    for (const why of whys) expect(why).toMatch(/\b(19|20)\d\d\b|OpenStax|JCGM 100:2008/);
    const [first, , third] = marks.map(({ lengthM }) => (100 * lengthM).toFixed(1));
    expect(whyOf('half-wave-from-difference')).toContain(`${third} cm − ${first} cm`);
    // Levine & Schwinger 1948: 0.6133 radii of 15 mm at low frequency, 1 % less at ka = 0.14.
    expect(whyOf('end-correction')).toMatch(/9\.[12] mm beyond the rim of this tube, 0\.61 of its radius/);
    // √(2η/ρω) with η = 1.82e-5 Pa s and ρ = 1.204 kg/m³ at 20 °C (CRC Handbook, from memory): 0.097 mm.
    expect(whyOf('free-air')).toContain('0.097 mm at 512 Hz');
    // 1.63 of 343.36 m/s, as at wallLoss.
    expect(whyOf('free-air')).toContain('15.0 mm radius that takes 0.47 %');
    expect(whyOf('place')).toContain('beside it');
    // 331.3·√(1 + t/273.15): 0.59 m/s for each degree at 20 °C.
    expect(whyOf('theory')).toContain('0.59 m/s for each degree');
  });

  it('says what is known of the mouth wherever it counts: for one mark, two and more', () => {
    const [one, two] = [[1], [1, 2]].map((orders) =>
      solved(solve(makeMarks([{ hz: 512, orders }], { mouth: null }))).working.map(workingStepWords),
    );
    expect(one?.[0]?.why).toContain('from what is known of this mouth: 0.66 ± 0.11 radii');
    const fit = two?.find(({ title }) => title === 'All marks and the mouth together');
    expect(fit?.numbers).toContain(
      'v and e from all 2 marks and what is known of this mouth (0.66 ± 0.11 radii)',
    );
    expect(fit?.why).toMatch(/The marks alone say e = 9\.\d ± [\d.]+ mm/);
    const exercise = solved(
      solve(makeMarks([{ hz: 512, orders: [1, 2] }], { mouth: 'ideal', lengthStandardUncertaintyM: 0.02 })),
    );
    const held = exercise.working.map(workingStepWords).find(({ title }) => title.includes('the mouth'));
    expect(held?.numbers).toContain('(no end correction, as in exercises)');
  });

  it('gives theory’s speed away in no step that a lesson leaves in', () => {
    const solution = solved(solve(makeMarks([{ hz: 512, orders: [1, 2, 3] }])));
    const speed = (solution.theory?.speedMps ?? 0).toFixed(1);
    // Measured here, too, to the last digit: only a step that names theory's would say so.
    const kept = stepsWithoutTheory(solution.working).map(workingStepWords);
    expect(kept.map(({ why }) => why ?? '').join(' ')).not.toContain(speed);
    expect(kept.map(({ title }) => title).join(' ')).not.toContain('Theory');
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
