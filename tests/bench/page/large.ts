import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import type { Page } from 'playwright-core';
import { build, preview } from 'vite';
import { findChromium } from '../../browser/findChromium.ts';
import { openPage } from '../../browser/support/openPage.ts';
import { largeExperiment } from '../../support/largeExperiment.ts';

/**
 * How long a very large experiment holds up the page: the main thread's longest task while it is opened, while a length
 * is typed, and in each view, by the browser's own list of long tasks (50 ms and more); and how long the answer takes.
 * `--site FOLDER` takes a site that is built already.
 */

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { site: { type: 'string' }, patience: { type: 'string', default: '180' } },
});
const patienceMs = 1000 * Number(values.patience);
const sizes = (
  positionals.length > 0 ? positionals : ['300,300,2', '3000,1,4', '5000,1,8', '5000,5000,1']
).map((text) => {
  const [marks = 0, places = 0, forks = 0] = text.split(',').map(Number);
  if (!(marks > 0 && places > 0 && forks > 0)) throw new RangeError(`${text} must be marks,places,forks`);
  return { marks, places, forks };
});

const WATCH = `
  window.longTasks = [];
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) window.longTasks.push(duration);
  }).observe({ type: 'longtask', buffered: true });
  window.isPending = (root) =>
    root.querySelector('.pending') !== null ||
    [...root.querySelectorAll('*')].some((one) => one.shadowRoot !== null && window.isPending(one.shadowRoot));
`;

/** The longest task since it was last asked, and all long ones together, ms. */
async function longTasks(page: Page): Promise<string> {
  const found = await page.evaluate(() => {
    const { longTasks: tasks } = window as unknown as { longTasks: number[] };
    return tasks.splice(0);
  });
  const sum = found.reduce((total, ms) => total + ms, 0);
  return `longest ${Math.max(0, ...found).toFixed(0)} ms, all long ones ${sum.toFixed(0)} ms`;
}

/** Until nothing is being worked out and the page rests. */
async function settle(page: Page): Promise<void> {
  await page.waitForTimeout(300);
  await page.waitForFunction(
    () => !(window as unknown as { isPending: (root: Document) => boolean }).isPending(document),
    undefined,
    { timeout: patienceMs, polling: 200 },
  );
  await page.waitForTimeout(300);
}

const folder = mkdtempSync(join(tmpdir(), 'bench-large-'));
const site = values.site ?? join(folder, 'site');
if (values.site === undefined) await build({ logLevel: 'error', build: { outDir: site, emptyOutDir: true } });
const server = await preview({
  logLevel: 'warn',
  build: { outDir: site },
  preview: { port: 0, host: '127.0.0.1' },
});
const url = server.resolvedUrls?.local[0];
if (url === undefined) throw new Error('The preview server gave no address.');
const say = (line: string): boolean => process.stdout.write(`${line}\n`);

for (const { marks, places, forks } of sizes) {
  say(`${marks} marks, ${places} places, ${forks} forks`);
  const file = join(folder, `large-${marks}-${places}.json`);
  writeFileSync(file, JSON.stringify(largeExperiment({ marks, places, forks, seed: 1 })));
  const opened = await openPage({ chromiumPath: findChromium(), url, beforeScripts: WATCH });
  const { page } = opened;
  page.setDefaultTimeout(patienceMs);
  const step = async (name: string, act: () => Promise<void>): Promise<void> => {
    await longTasks(page);
    const begun = performance.now();
    await act();
    await settle(page);
    const tookMs = performance.now() - begun - 600;
    say(`  ${name.padEnd(22)} ${await longTasks(page)}; done after ${tookMs.toFixed(0)} ms`);
  };
  const goTo = async (view: string): Promise<void> => {
    const link = page.getByRole('navigation', { name: 'Views' }).getByRole('link', { name: view });
    await link.click();
    await link.and(page.locator('[aria-current=page]')).waitFor();
  };
  try {
    await goTo('Records');
    await step('open the file', async () => {
      await page.getByLabel('Experiment file to open').setInputFiles(file);
      await page.getByText('is open. What was open before').waitFor();
    });
    await step('Measure', () => goTo('Measure'));
    await step('type a length', async () => {
      const field = page.getByRole('textbox', { name: 'Length of a new mark' });
      await field.fill('15.8');
      await field.press('Enter');
    });
    await step('type a length again', async () => {
      const field = page.getByRole('textbox', { name: 'Length of a new mark' });
      await field.fill('15.9');
      await field.press('Enter');
    });
    for (const view of ['Apparatus', 'Working', 'Compare', 'Records']) await step(view, () => goTo(view));
    await step('report', async () => {
      await page.getByRole('link', { name: 'Open the report' }).click();
      await page.getByRole('button', { name: 'Save as an HTML file' }).waitFor();
    });
  } catch (error) {
    say(`  gave up: ${error instanceof Error ? (error.message.split('\n')[0] ?? '') : String(error)}`);
  }
  if (opened.faults.length > 0) say(`  faults: ${opened.faults.slice(0, 3).join('; ')}`);
  await opened.close();
}
await server.close();
rmSync(folder, { recursive: true, force: true });
