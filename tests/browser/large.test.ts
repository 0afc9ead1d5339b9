import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { addMark } from '../../src/notebook/markList.ts';
import { newMark } from '../../src/notebook/newMark.ts';
import type { Experiment } from '../../src/notebook/experiment.ts';
import { resultLines } from '../../src/words/result.ts';
import { solveExperiment } from '../../src/session/experiment/solveExperiment.ts';
import { largeExperiment } from '../support/largeExperiment.ts';
import type { BenchPage } from './support/benchPage.ts';
import { scratchFolder } from './support/benchPage.ts';
import { eachBench } from './support/eachBench.ts';

const { open, current } = eachBench(true);

/** No pause of the page may be longer, on a busy machine, too. */
const LONGEST_PAUSE_MS = 1000;

const WATCH = `
  window.longest = 0;
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) window.longest = Math.max(window.longest, duration);
  }).observe({ type: 'longtask', buffered: true });
`;
const longestPauseMs = (page: Page): Promise<number> =>
  page.evaluate(() => (window as unknown as { longest: number }).longest);

async function openFile(bench: BenchPage, experiment: Experiment): Promise<void> {
  const file = join(scratchFolder(), 'large.json');
  writeFileSync(file, JSON.stringify(experiment));
  await bench.goTo('Records');
  await bench.page.getByLabel('Experiment file to open').setInputFiles(file);
  await bench.page.getByText('is open. What was open before').waitFor();
}

/** What the solver itself finds at the present place, as the page writes it. */
function expectedSpeed(experiment: Experiment): { speedMps: number; uncertaintyMps: number } {
  const { places } = solveExperiment(experiment);
  const here = places.find((one) => one.placeId === experiment.present.placeId);
  const speed = here === undefined ? null : resultLines(here.solution).speed;
  return { speedMps: Number(speed?.value), uncertaintyMps: Number(speed?.uncertainty) };
}

describe('three thousand marks', () => {
  const large = largeExperiment({ marks: 3000, places: 1, forks: 4, seed: 1, blunders: 0.01, repeats: 0.05 });

  it('are solved beside the page: typing never waits, and the result is what the solver finds', async () => {
    const bench = await open({ beforeScripts: WATCH });
    const { page } = bench;
    await openFile(bench, large);
    await bench.goTo('Measure');
    await expect.poll(() => bench.speed()).toEqual(expectedSpeed(large));
    const numbers = await bench.marks.count();
    expect(numbers).toBe(50);
    await bench.addMarks(['15.8']);
    const typed = addMark(large, {
      ...newMark(large.present, 'typed', '2031-01-01T00:00:00.000Z', null),
      lengthM: 0.158,
    });
    await expect.poll(() => bench.speed()).toEqual(expectedSpeed(typed));
    await expect.poll(() => page.locator('.pending').count()).toBe(0);
    expect(await longestPauseMs(page)).toBeLessThan(LONGEST_PAUSE_MS);
  });

  it('are paged through, and the key E leads to one that waits wherever it is', async () => {
    const bench = await open();
    const { page } = bench;
    const waiting = large.marks.map((mark, i) =>
      i === 1500 ? { ...mark, lengthM: null, repeatOf: null } : mark,
    );
    await openFile(bench, { ...large, marks: waiting });
    await bench.goTo('Measure');
    const pages = page.getByRole('navigation', { name: 'Pages of marks' });
    await pages.getByRole('button', { name: 'Next marks' }).click();
    await pages.getByRole('combobox').selectOption({ label: '101 to 150' });
    await expect.poll(() => bench.marks.count()).toBe(50);
    await page.getByRole('heading', { name: 'Marks' }).click();
    await page.keyboard.press('e');
    const field = page.getByRole('textbox', { name: /^Length of mark/ }).first();
    await expect
      .poll(() => field.evaluate((input) => input === (input.getRootNode() as ShadowRoot).activeElement))
      .toBe(true);
    expect(await field.inputValue()).toBe('');
    expect((await new AxeBuilder({ page }).analyze()).violations.map(({ id }) => id)).toEqual([]);
  });
});

describe('three hundred places', () => {
  const large = largeExperiment({ marks: 600, places: 300, forks: 2, seed: 2 });

  it('are compared one with the others, some at a time, without a long pause', async () => {
    const bench = await open({ beforeScripts: WATCH });
    const { page } = bench;
    await openFile(bench, large);
    await bench.goTo('Compare');
    const compare = page.getByRole('region', { name: 'Compare' });
    await compare.getByText('300 of them make 44850 pairs').waitFor();
    const pairs = compare.getByRole('listitem');
    expect(await pairs.count()).toBe(20);
    await compare.getByRole('button', { name: 'Next pairs' }).click();
    await compare.getByText(/Room 1\W.*Room 22\b/).waitFor();
    await compare.getByLabel('Compare with the others').selectOption({ label: 'Room 299' });
    await compare.getByText(/Room 299\W.*Room 1\b/).waitFor();
    expect(await pairs.count()).toBe(20);
    const places = page.getByRole('region', { name: 'Speed against temperature' });
    expect(await places.getByRole('row').count()).toBe(26);
    await bench.goTo('Records');
    await page.getByRole('link', { name: 'Open the report' }).click();
    await page.getByText('44830 further pairs of places are not printed').waitFor();
    expect(await longestPauseMs(page)).toBeLessThan(LONGEST_PAUSE_MS);
    // Last, for looking at the page through is itself a long task of it.
    await bench.goTo('Compare');
    expect((await new AxeBuilder({ page }).analyze()).violations.map(({ id }) => id)).toEqual([]);
    expect(current()?.faults).toEqual([]);
  });
});

describe('the worker that answers', () => {
  it('is among the files that the site keeps for use without a network', () => {
    const worker = readFileSync('dist/service-worker.js', 'utf8');
    expect(worker).toMatch(/assets\/answerWorker-[^"]+\.js/);
    expect(worker).toMatch(/assets\/answersInWorker-[^"]+\.js/);
  });
});
