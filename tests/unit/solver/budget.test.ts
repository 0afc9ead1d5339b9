import { describe, expect, it } from 'vitest';
import { readMarksTable } from '../../../src/marks/marksTable.ts';
import { marksOfRows } from '../../../src/solver/marksOfRows.ts';
import type { BudgetLine, Solution, SolverMark } from '../../../src/solver/solution.ts';
import { solve } from '../../../src/solver/solve.ts';
import { moistAir } from '../../support/column/columnGas.ts';
import { plainBudget } from '../../support/plainBudget.ts';
import type { PlainBudget, PlainKnowledge } from '../../support/plainBudget.ts';
import { makeMarks, solved } from './makeMarks.ts';
import type { Wanted } from './makeMarks.ts';

/*
 * The budget against generalised least squares with the covariance written out in full (`tests/support/plainBudget.ts`):
 * other arithmetic, other constants of air. What is stated beforehand stands here as numbers, not as the code's names.
 */

const GAS = moistAir({ temperatureC: 20, humidityPct: 50, co2: 0.0004 });
/** Rule: half a millimetre of zero, 0.02 % of scale; walls to a tenth of their slowing. */
const RULE = { zeroM: 0.0005, scale: 2e-4, wall: 0.1 };
const FORKS = { gas: GAS, radiusM: 0.015, readingM: 0.0007, fork: 0.001, ...RULE };

/** Relative: constants of air, and Levine and Schwinger against a fit to them. */
const NEAR = 0.01;

function near(actual: number, expected: number, what: string): void {
  expect(Math.abs(actual - expected), `${what}: ${actual} against ${expected}`).toBeLessThan(
    NEAR * Math.abs(expected) + 1e-4,
  );
}

function expectBudget(
  marks: readonly SolverMark[],
  known: PlainKnowledge,
): Solution & { plain: PlainBudget } {
  const solution = solved(solve(marks));
  const plain = plainBudget(
    marks.map(({ frequencyHz, ends, lengthM }, i) => ({
      frequencyHz,
      ends,
      lengthM,
      order: solution.marks[i].order,
    })),
    known,
  );
  const of = (source: BudgetLine['source']): number =>
    Math.hypot(
      ...solution.budget.filter((line) => line.source === source).map((line) => line.contributionMps),
    );
  for (const [source, contributionMps] of Object.entries(plain.contributionsMps)) {
    near(of(source as BudgetLine['source']), contributionMps, source);
  }
  near(solution.standardUncertaintyMps, plain.standardUncertaintyMps, 'u');
  near(solution.speedEndCorrelation, plain.correlation, 'r(v, e)');
  expect(Math.abs(solution.speedMps / plain.speedMps - 1)).toBeLessThan(4e-4);
  return { ...solution, plain };
}

/** What the bench makes of a table as it stands. */
function solutionOf(text: string): Solution {
  const table = readMarksTable(text);
  if (!table.ok) throw new Error('the table must be read');
  return solved(solve(marksOfRows(table.rows)));
}

/** Welch and Satterthwaite (JCGM 100:2008, G.4.1) with 50 degrees for what was stated, 20 for what was judged. */
function welchDegrees(budget: readonly BudgetLine[], standardUncertaintyMps: number): number {
  const spread = budget.reduce((sum, { source, contributionMps }) => {
    const isJudged = source === 'wall' || source === 'end';
    return sum + contributionMps ** 4 / (isJudged ? 20 : 50);
  }, 0);
  return standardUncertaintyMps ** 4 / spread;
}

const THREE: readonly Wanted[] = [{ hz: 512, orders: [1, 2, 3] }];

describe('budget by plain least squares', () => {
  it('of three marks at a thin rim: e/a 0.6133 ± 0.03', () => {
    const { budget, standardUncertaintyMps, expandedUncertaintyMps } = expectBudget(makeMarks(THREE), {
      ...FORKS,
      end: [0.6133, 0.03],
    });
    const degrees = welchDegrees(budget, standardUncertaintyMps);
    // Student's t from its expansion (Abramowitz & Stegun 26.7.5), good to 0.001 from 20 degrees on.
    const z = 1.959964;
    const t =
      z + (z ** 3 + z) / (4 * degrees) + (5 * z ** 5 + 16 * z ** 3 + 3 * z) / (96 * degrees * degrees);
    near(expandedUncertaintyMps / standardUncertaintyMps, t, 'k');
    expect(t).toBeGreaterThan(1.965);
  });

  it.each([
    ['thick-rim', 0.69, 0.04],
    ['flange', 0.8216, 0.03],
    ['obstructed', 0.76, 0.08],
    [null, 0.66, 0.11],
  ] as const)('of one mark at the mouth %s: e/a %s ± %s', (mouth, ratio, standardUncertainty) => {
    // As long as it is with that mouth and not with the thin rim's 0.6133.
    const [thin] = makeMarks([{ hz: 512, orders: [1] }], { mouth });
    const marks = [{ ...thin, lengthM: thin.lengthM - (ratio - 0.6133) * 0.015 }];
    const { plain, ...solution } = expectBudget(marks, { ...FORKS, end: [ratio, standardUncertainty] });
    // The mouth is most of it, so this is where a wrong one shows.
    expect(plain.contributionsMps.end).toBeGreaterThan(0.4);
    const degrees = welchDegrees(solution.budget, solution.standardUncertaintyMps);
    near(solution.effectiveDegreesOfFreedom, degrees, 'degrees of freedom');
  });

  it('of marks that give their end correction: the rule’s zero moves all alike, so the speed not at all', () => {
    const { budget } = solved(solve(makeMarks(THREE, { radiusM: null })));
    const zero = budget.find(({ source }) => source === 'zero');
    expect(zero?.standardUncertainty).toBe(RULE.zeroM);
    expect(zero?.sensitivity).toBe(0);
  });

  it('of closed and open columns of two forks', () => {
    const wanted: readonly Wanted[] = [
      { hz: 384, orders: [1, 2] },
      { hz: 512, ends: 'open', orders: [1, 2] },
    ];
    expectBudget(makeMarks(wanted, { mouth: null }), { ...FORKS, end: [0.66, 0.11] });
  });

  it('of one mark without a diameter: e = 11 ± 3.5 mm, and the walls of some tube', () => {
    expectBudget(makeMarks([{ hz: 512, orders: [1] }], { radiusM: null, mouth: null }), {
      ...FORKS,
      radiusM: null,
      wall: 0.85,
      end: [0.011, 0.0035],
    });
  });

  it('of three marks without a diameter: their own end correction', () => {
    const { plain } = expectBudget(makeMarks(THREE, { radiusM: null, mouth: null }), {
      ...FORKS,
      radiusM: null,
      wall: 0.85,
      end: null,
    });
    expect(plain.contributionsMps.end).toBe(0);
  });
});

describe('what is taken where a table says nothing', () => {
  const lineOf = (text: string, source: BudgetLine['source']): BudgetLine => {
    const line = solutionOf(text).budget.find((one) => one.source === source);
    if (line === undefined) throw new Error(`no line of ${source}`);
    return line;
  };
  const EAR = 'fork_hz,ends,length_cm,diameter_mm\n512,closed,15.8,30\n512,closed,49.25,30';
  const CENTRE =
    'fork_hz,ends,length_cm,diameter_mm,located_by\n512,closed,15.8,30,centre\n512,closed,49.25,30,centre';

  it('is a stamp good to 0.5 %, a rectangle: 512 Hz · 0.005/√3 (JCGM 100:2008, 4.3.7)', () => {
    expect(lineOf(EAR, 'fork').standardUncertainty).toBeCloseTo((512 * 0.005) / Math.sqrt(3), 9);
    expect(lineOf(EAR, 'fork').distribution).toBe('rectangular');
  });

  it('is a place found by ear to 2.5 mm, until lengths tell more', () => {
    expect(lineOf(EAR.slice(0, EAR.lastIndexOf('\n')), 'reading').standardUncertainty).toBeCloseTo(0.0025, 9);
  });

  it('is a centre that was read to a millimetre and shown to 0.15 half widths of 1.3 and 2.9 mm', () => {
    // [2αL + (ka)²/2]/2k with α = 3e-5·√f/a (Fletcher & Rossing 1998): 1.29 and 2.91 mm; both squares' mean.
    const shownM = 0.15 * Math.sqrt((0.00129 ** 2 + 0.00291 ** 2) / 2);
    expect(lineOf(CENTRE, 'reading').standardUncertainty).toBeCloseTo(Math.hypot(0.001, shownM), 5);
  });

  it('is half a millimetre of the rule’s zero and 0.02 % of its scale', () => {
    expect(lineOf(EAR, 'zero').standardUncertainty).toBe(0.0005);
    expect(lineOf(EAR, 'scale').standardUncertainty).toBe(2e-4);
  });

  it('is a first resonance 10 dB above the fork, found 0.23 half widths off: 0.30 mm of 1.29', () => {
    // 0.23 is the rms over all angles between the fork's sound and the column's, searched on |1 + m·e^iθ/(1 + ix)|.
    const { standardUncertainty } = lineOf(EAR.slice(0, EAR.lastIndexOf('\n')), 'loudest');
    expect(Math.abs(standardUncertainty / (0.23 * 0.00129) - 1)).toBeLessThan(0.03);
  });
});

describe('lengths found by ear, nothing stated', () => {
  it('correct the 2.5 mm, which are worth five residuals: exact ones leave 2.5·√(5/(5 + ν))', () => {
    const assumed = { lengthStandardUncertaintyM: 0.0025, isReadingAssumed: true };
    for (const orders of [
      [1, 2, 3],
      [1, 2, 3, 4, 5, 6],
    ]) {
      const { budget } = solved(solve(makeMarks([{ hz: 512, orders }], assumed)));
      const line = budget.find(({ source }) => source === 'reading');
      // Lengths and the mouth, less speed and end correction.
      const degrees = orders.length + 1 - 2;
      near(line?.standardUncertainty ?? 0, 0.0025 * Math.sqrt(5 / (5 + degrees)), 'reading');
      expect(line?.degreesOfFreedom).toBeCloseTo(5 + degrees, 9);
    }
  });
});

describe('rows that say the same', () => {
  const HEADING = 'fork_hz,ends,length_cm,diameter_mm,length_uncertainty_mm\n';
  const ROWS = '512,closed,15.75,30,1\n512,closed,49.3,30,1\n512,closed,82.6,30,1\n';

  it.each([
    ['that agree', ROWS],
    ['that scatter more than was stated', ROWS.replace('49.3', '49.7')],
  ])('count once, however often they were pasted: lengths %s', (_name, rows) => {
    const once = solutionOf(HEADING + rows);
    const often = solutionOf(HEADING + rows.repeat(10));
    expect(often.speedMps).toBeCloseTo(once.speedMps, 6);
    expect(often.standardUncertaintyMps).toBeCloseTo(once.standardUncertaintyMps, 6);
    expect(often.effectiveDegreesOfFreedom).toBeCloseTo(once.effectiveDegreesOfFreedom, 6);
    expect(often.warnings.map(({ code }) => code)).toContain('exact-repeats');
  });

  it('of one fork written as 512 and 511.8 Hz have one fork’s error', () => {
    const forksOf = (otherHz: number): number =>
      solutionOf(`${HEADING}512,closed,15.75,30,1\n${otherHz},closed,49.3,30,1\n`).budget.filter(
        ({ source }) => source === 'fork',
      ).length;
    // Two stamps differ by 0.2 Hz where each is good to 1.5 Hz.
    expect(forksOf(511.8)).toBe(1);
    expect(forksOf(480)).toBe(2);
  });
});
