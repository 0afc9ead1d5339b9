// @vitest-environment happy-dom
import { describe, expect, it } from 'vitest';
import { budgetPart } from '../../../src/report/labReport/budgetPart.ts';
import { budgetTable } from '../../../src/report/tables/budgetTable.ts';
import { resultRows } from '../../../src/report/tables/resultRows.ts';
import { solve } from '../../../src/solver/solve.ts';
import { solveExperiment } from '../../../src/session/experiment/solveExperiment.ts';
import '../../../src/ui/analysis/workingElement.ts';
import { budgetFacts, budgetRows } from '../../../src/words/budgetLines.ts';
import { laterWords } from '../../../src/words/inUse.ts';
import { exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';
import { benchInTest } from '../session/benchInTest.ts';
import { makeMarks, solved } from '../solver/makeMarks.ts';

const one = solved(solve(makeMarks([{ hz: 512, orders: [1, 2, 3] }], { lengthStandardUncertaintyM: 0.001 })));

/** Two readings of each of two resonances, 1 mm apart: s² = (2·0.5² + 2·0.5²)/2 mm², pooled by JCGM 100:2008, 4.2.4. */
function readTwice() {
  const marks = [0.158, 0.159, 0.4925, 0.4935].map((lengthM, i) =>
    exampleMark(`mark-${i}`, { lengthM, createdAt: `2030-03-01T10:00:0${i}.000Z` }),
  );
  const experiment = exampleExperiment(marks);
  const { places } = solveExperiment(experiment);
  const solution = places[0]?.solution;
  if (solution === undefined || solution.speedMps === null) throw new Error('four lengths have a speed');
  return { experiment, places, solution };
}

describe('the budget in words', () => {
  it('has for each line what the GUM asks, and the sensitivity times u is the contribution', () => {
    const rows = budgetRows(one.budget);
    for (const row of rows) {
      expect(Object.keys(row)).toEqual(Object.keys(laterWords.budgetColumns));
      for (const text of Object.values(row)) expect(text).not.toBe('');
      expect(row.evaluation).toMatch(/^[AB]$/);
    }
    const fork = rows.find(({ quantity }) => quantity === 'Frequency of the 512 Hz fork');
    // v = f λ: 1 Hz of 512 is as large a part as 343.99/512 m/s of the speed, at 20 °C and 50 % (Cramer 1993).
    expect(fork?.sensitivity).toBe('0.67 m/s per Hz');
    // 0.1 % of 512 Hz, as the test's marks state.
    expect(fork).toMatchObject({ uncertainty: '0.51 Hz', evaluation: 'B', distribution: 'normal' });
    const u = Number.parseFloat(fork?.uncertainty ?? '');
    expect(u * Number.parseFloat(fork?.sensitivity ?? '')).toBeCloseTo(
      Number.parseFloat(fork?.contribution ?? ''),
      1,
    );
    const shares = rows.map(({ share }) => Number.parseFloat(share));
    expect(Math.abs(shares.reduce((sum, share) => sum + share, 0) - 100)).toBeLessThanOrEqual(
      rows.length / 2,
    );
  });

  it('takes a stamp for a rectangle', () => {
    const { solution } = readTwice();
    const fork = budgetRows(solution.budget).find(({ quantity }) => quantity.startsWith('Frequency'));
    expect(fork?.distribution).toBe('rectangular');
  });

  it('says below it r(v, e), the degrees of freedom, and how readings repeat where some do', () => {
    const names = budgetFacts(one).map(({ name }) => name);
    expect(names).toEqual(['Correlation of speed and end correction', 'Effective degrees of freedom']);
    const { solution } = readTwice();
    const facts = budgetFacts(solution).map(({ value }) => value);
    expect(facts[0]).toMatch(/^r\(v, e\) = −?[01]\.\d\d$/);
    expect(facts[2]).toBe('s = 0.71 mm, Type A, from 2 degrees of freedom');
  });

  it('stands in the report, in the tables and on the page', async () => {
    const { experiment, places, solution } = readTwice();
    const printed = budgetPart(solution).text;
    for (const heading of Object.values(laterWords.budgetColumns)) expect(printed).toContain(heading);
    expect(printed).toContain('s = 0.71 mm');
    const [heading = [], first = []] = budgetTable(experiment, places);
    expect(first[heading.indexOf('evaluation')]).toMatch(/^[AB]$/);
    expect(first[heading.indexOf('distribution')]).toMatch(/^(normal|rectangular|arcsine)$/);
    const [names = [], result = []] = resultRows(experiment, places);
    expect(result[names.indexOf('speed_end_correlation')]).toBe(solution.speedEndCorrelation);
    expect(result[names.indexOf('repeatability_mm')]).toBeCloseTo(Math.SQRT1_2, 9);

    const session = benchInTest();
    session.change('type length', () => ({ ...experiment, id: session.experiment.id }));
    const element = document.createElement('bench-working');
    element.session = session;
    document.body.append(element);
    await element.updateComplete;
    const box = element.renderRoot.querySelector('.budget .scroll');
    expect(box?.getAttribute('tabindex')).toBe('0');
    expect([...(box?.querySelectorAll('thead th') ?? [])].map((th) => th.textContent)).toEqual(
      Object.values(laterWords.budgetColumns),
    );
    expect(element.renderRoot.querySelector('.budget dl')?.textContent).toContain('r(v, e)');
    element.remove();
  });
});
