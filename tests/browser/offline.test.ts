import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, describe, expect, inject, it } from 'vitest';
import { BenchPage, scratchFolder } from './support/benchPage.ts';
import { openPage } from './support/openPage.ts';
import type { OpenedPage } from './support/openPage.ts';
import { serveSite } from './support/siteServer.ts';
import type { SiteServer } from './support/siteServer.ts';

const BUILT = 'dist';
/** A host may keep the bench anywhere. */
const PATH = '/school/physics lab/bench/'.replaceAll(' ', '%20');

const GROUPS = [
  'group,speed_mps,standard_uncertainty_mps',
  'Group 1,343.2,0.8',
  'Group 2,344.1,1.1',
  'Group 3,342.9,0.9',
].join('\n');

let opened: OpenedPage | null = null;
let site: SiteServer | null = null;

async function open(): Promise<{ bench: BenchPage; site: SiteServer }> {
  site = await serveSite(BUILT, PATH);
  opened = await openPage({ chromiumPath: inject('chromiumPath'), url: site.url });
  await opened.page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await expect
    .poll(() => opened?.page.evaluate(() => navigator.serviceWorker.controller !== null))
    .toBe(true);
  return { bench: new BenchPage(opened.page), site };
}

afterEach(async () => {
  await opened?.close();
  await site?.close();
  opened = null;
  site = null;
});

/** The built site as a later build would be: another page, and so another list in the service worker. */
function laterSite(): string {
  const folder = scratchFolder();
  cpSync(BUILT, folder, { recursive: true });
  const page = join(folder, 'index.html');
  writeFileSync(page, readFileSync(page, 'utf8').replace('<title>', '<title>Newer '));
  const worker = join(folder, 'service-worker.js');
  const changed = readFileSync(worker, 'utf8').replace(/("?version"?:\s*["'`])/, '$1later');
  expect(changed).not.toBe(readFileSync(worker, 'utf8'));
  writeFileSync(worker, changed);
  return folder;
}

async function askForUpdate(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await (await navigator.serviceWorker.ready).update();
  });
  await page.getByText('A newer version of this page is ready').waitFor();
}

describe('with the network off', () => {
  it('the whole job is done after one visit: practice sound, a mark, a speed, every view, files out', async () => {
    const { bench, site: host } = await open();
    await host.close();
    const { page } = bench;
    await page.reload();
    const handle = page.getByRole('slider', { name: 'Length of the column' });
    await handle.fill('12');
    await page.getByRole('button', { name: 'Note these readings' }).click();
    await bench.listen();
    await page.waitForTimeout(3000);
    await page.getByRole('button', { name: 'Strike the fork' }).click();
    await page.waitForTimeout(1500);
    await handle.fill('20');
    await bench.lengthOf(1).waitFor({ timeout: 15_000 });
    await bench.stop();
    await bench.lengthOf(1).fill('15,8');
    await bench.lengthOf(1).press('Enter');
    expect((await bench.speed()).speedMps).toBeGreaterThan(320);
    for (const view of ['Apparatus', 'Check', 'Working', 'Compare', 'Records']) {
      await bench.goTo(view);
      await page.locator('bench-app main section, bench-app main [role=region]').first().waitFor();
    }
    // What is reached from Records: the lab report with its picture, the class, and the sound that is kept.
    await page.getByRole('link', { name: 'Open the report' }).click();
    const report = page.getByRole('article');
    await report.getByText(/c = \(3\d\d/).waitFor();
    expect(await report.locator('figure svg').count()).toBeGreaterThan(0);
    await bench.goTo('Records');
    await page.getByRole('region', { name: 'Saved sound' }).getByRole('checkbox').check();
    await page.getByRole('link', { name: /class view/i }).click();
    // Records takes tables, too, until the class view is there.
    await page.getByRole('region', { name: 'Class', exact: true }).waitFor();
    await page.getByRole('textbox', { name: 'Paste or type a table' }).fill(GROUPS);
    await page.getByRole('button', { name: 'Read the table' }).click();
    await page.getByRole('region', { name: 'Table of groups' }).getByText('Group 2').waitFor();
    await page.evaluate(() => (location.hash = '#microphone'));
    await page.getByRole('article', { name: 'Microphone help' }).waitFor();
    expect(readFileSync(await bench.saveCsv(), 'utf8')).toContain('15.8');
    expect(JSON.parse(readFileSync(await bench.saveJson(), 'utf8'))).toMatchObject({ schemaVersion: 5 });
    expect(opened?.faults).toEqual([]);
  });
});

describe('a newer version', () => {
  it('is offered, waits while there is listening or another tab, and takes over when it is wanted', async () => {
    const { bench, site: host } = await open();
    const { page } = bench;
    const field = page.getByRole('textbox', { name: 'Length of a new mark' });
    await field.fill('15.8');
    await field.press('Enter');
    host.folder = laterSite();
    await askForUpdate(page);
    expect(await page.title()).toBe('Air Column Bench');
    const take = page.getByRole('button', { name: 'Update now' });
    await bench.listen();
    await expect.poll(() => take.isDisabled()).toBe(true);
    await bench.stop();
    const other = await page.context().newPage();
    await other.goto(host.url);
    expect(await other.title()).toBe('Air Column Bench');
    await take.click();
    await page.getByText('Close its other tabs first').waitFor();
    await other.close();
    await take.click();
    await expect.poll(() => page.title()).toBe('Newer Air Column Bench');
    await expect.poll(() => bench.marks.count()).toBe(1);
    expect(await page.evaluate(async () => (await caches.keys()).length)).toBe(1);
  });
});
