// @vitest-environment node
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveTable } from '../../../src/cli/solveTable.ts';
import { readTableText } from '../../../src/intake/readTableText.ts';
import { experimentFromRows } from '../../../src/intake/takeRows.ts';
import { newExperiment } from '../../../src/notebook/newExperiment.ts';
import { laterWords } from '../../../src/words/inUse.ts';
import { readingTakenWords } from '../../../src/words/readingTaken.ts';
import { resultLines } from '../../../src/words/result.ts';
import { roundPair } from '../../../src/words/numbers.ts';
import { solveExperiment } from '../../../src/session/experiment/solveExperiment.ts';

const FIXTURES = join(import.meta.dirname, '../../../fixtures');

/** The result as the page shows it of a table that was opened there; null where it has several places. */
function onThePage(text: string) {
  const { content } = readTableText('table.csv', text, null);
  if (content?.kind !== 'table') throw new Error('The page reads no table.');
  let ids = 0;
  const { experiment } = experimentFromRows('Table', content.rows, {
    newId: () => `id-${(ids += 1)}`,
    now: '2030-03-01T10:00:00.000Z',
  });
  const { places } = solveExperiment(experiment);
  const [only] = places;
  if (places.length !== 1 || only === undefined) return null;
  return resultLines(only.solution).speed;
}

/** The same by the command line, rounded as the page rounds. */
function byTheCommand(text: string) {
  const solved = solveTable(text);
  if ('error' in solved) throw new Error(solved.error);
  return roundPair(solved.speedMps, solved.expandedUncertaintyMps);
}

describe('a table that states no uncertainties', () => {
  it('gives the same speed and the same ± on the page and by the command line, to the last digit', () => {
    const bare = 'fork_hz,ends,length_cm,diameter_mm,temperature_c\n';
    const text = `${bare}512,closed,15.8,30,21\n512,closed,49.3,30,21\n512,closed,82.7,30,21\n480,closed,17.0,30,21\n`;
    const speed = onThePage(text);
    expect(speed).not.toBeNull();
    expect(speed).toEqual(byTheCommand(text));
  });

  it('does so for any lengths, forks and columns', () => {
    const row = fc.record({
      hz: fc.constantFrom(256, 320, 426.6, 512),
      ends: fc.constantFrom('closed', 'open'),
      order: fc.integer({ min: 1, max: 3 }),
      offMm: fc.integer({ min: -15, max: 15 }),
    });
    const heading = fc.constantFrom('', ',length_uncertainty_mm', ',fork_uncertainty_hz');
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 8 }), heading, (rows, more) => {
        const lines = rows.map(({ hz, ends, order, offMm }) => {
          const halves = ends === 'closed' ? order - 0.5 : order;
          const lengthCm = (halves * 34_350) / (2 * hz) - (ends === 'closed' ? 1 : 2) + offMm / 100;
          return `${hz},${ends},${lengthCm.toFixed(2)},32,20${more === '' ? '' : ',0.8'}`;
        });
        const text = `fork_hz,ends,length_cm,diameter_mm,temperature_c${more}\n${lines.join('\n')}\n`;
        expect(onThePage(text)).toEqual(byTheCommand(text));
      }),
      { numRuns: 60 },
    );
  });

  it('does so for each table among the fixtures that has one place', () => {
    const tables = readdirSync(FIXTURES).filter((name) => name.endsWith('.csv'));
    const compared = tables.filter((name) => {
      const text = readFileSync(join(FIXTURES, name), 'utf8');
      const speed = onThePage(text);
      if (speed !== null) expect(speed, name).toEqual(byTheCommand(text));
      return speed !== null;
    });
    expect(compared.length).toBeGreaterThan(0);
  });
});

describe('what is taken where nothing is stated', () => {
  it('is 2.5 mm for a length found by ear, 1 mm at a shown centre and ±0.5 % for a stamp, as the command says', () => {
    const { rule, forks } = newExperiment('a', '2030-03-01T10:00:00.000Z');
    expect(rule.readingStandardUncertaintyM).toBeNull();
    // Half width over the root of three: JCGM 100:2008, 4.3.7.
    expect(forks[0]?.standardUncertaintyHz).toBeCloseTo((0.005 * 512) / Math.sqrt(3), 12);
    const solved = solveTable('fork_hz,ends,length_cm\n512,closed,16\n512,closed,49.5\n');
    if ('error' in solved) throw new Error(solved.error);
    const messages = solved.warnings.map(({ message }) => message).join(' ');
    expect(messages).toContain(
      '2.5 mm is taken for a length found by ear, 1 mm where the page showed the centre',
    );
    // The page says the same of its empty field.
    expect(laterWords.tube.readingHint(readingTakenWords())).toContain(
      '2.5 mm for a length found by ear, 1 mm where this page showed the centre',
    );
    expect(messages).toContain('within ±0.5 %');
  });

  it('counts as a width of its own beside widths that are stated', () => {
    const text =
      'fork_hz,ends,length_cm,length_uncertainty_mm\n512,closed,16,0.4\n512,closed,49.5,\n512,closed,83,0.6\n';
    const { content } = readTableText('table.csv', text, null);
    if (content?.kind !== 'table') throw new Error('The page reads no table.');
    const taken = experimentFromRows('Table', content.rows, { newId: () => String(Math.random()), now: '' });
    expect(taken.experiment.rule.readingStandardUncertaintyM).toBe(0.0025);
    expect(taken.remarks.join(' ')).toContain('the largest, 2.5 mm, is taken for all');
  });
});
