import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { RECORDS_OF_EVERY_VERSION } from '../unit/notebook/recordsOfEveryVersion.ts';
import { BenchPage, scratchFolder } from './support/benchPage.ts';
import { openKillable } from './support/killableBrowser.ts';
import { eachBench } from './support/eachBench.ts';
import { SHARED_DATABASE, recordInStore, storeOfFirstVersion } from './support/storedRecords.ts';
import type {} from '../../src/ui/appElement.ts';

const { open, current } = eachBench();

/** Until the page says that all is saved. */
async function saved(page: Page): Promise<void> {
  await expect
    .poll(() => page.evaluate(() => document.querySelector('bench-app')?.session.saveState.kind))
    .toBe('saved');
}

/** What the marks' lengths are, however they are written: as typed here, to the millimetre elsewhere. */
const readings = async (bench: BenchPage): Promise<number[]> => (await bench.lengths()).map(Number);

describe('steps', () => {
  it('are undone and redone after a reload', async () => {
    const bench = await open();
    await bench.addMarks(['10', '20', '30']);
    await saved(bench.page);
    await bench.page.reload();
    await expect.poll(() => readings(bench)).toEqual([10, 20, 30]);
    await bench.page.getByRole('button', { name: /^Undo/ }).click();
    await expect.poll(() => readings(bench)).toEqual([10, 20]);
    await saved(bench.page);
    await bench.page.reload();
    await expect.poll(() => readings(bench)).toEqual([10, 20]);
    await bench.page.getByRole('heading', { name: 'Marks' }).click();
    await bench.page.keyboard.press('Control+y');
    await expect.poll(() => readings(bench)).toEqual([10, 20, 30]);
  });
});

describe('the list of experiments', () => {
  it('new, rename, duplicate, delete, bring back', async () => {
    const bench = await open();
    const { page } = bench;
    await bench.addMarks(['10']);
    await bench.goTo('Records');
    const list = page.getByRole('region', { name: 'Experiments' });
    await list.getByRole('button', { name: 'Rename Experiment', exact: true }).click();
    await list.getByRole('textbox', { name: 'New title' }).fill('Cold room');
    await list.getByRole('textbox', { name: 'New title' }).press('Enter');
    await list.getByRole('button', { name: 'Duplicate Cold room', exact: true }).click();
    await list.getByRole('button', { name: 'Open Cold room (copy)' }).click();
    await bench.goTo('Measure');
    await expect.poll(() => readings(bench)).toEqual([10]);
    await bench.addMarks(['20']);
    await bench.goTo('Records');
    await list.getByRole('button', { name: 'New, same apparatus' }).click();
    await list.getByRole('button', { name: 'Delete Cold room (copy)' }).click();
    await list.getByText('Deleted experiments (1)').click();
    await list.getByRole('button', { name: 'Bring back Cold room (copy)' }).click();
    await list.getByRole('button', { name: 'Open Cold room (copy)' }).click();
    await bench.goTo('Measure');
    await expect.poll(() => readings(bench)).toEqual([10, 20]);
    await bench.goTo('Records');
    await list.getByRole('button', { name: 'Open Cold room', exact: true }).click();
    await bench.goTo('Measure');
    await expect.poll(() => readings(bench)).toEqual([10]);
    expect(current()?.faults).toEqual([]);
  });

  it('one is erased for good only after a question', async () => {
    const bench = await open();
    const { page } = bench;
    await bench.addMarks(['10']);
    await bench.goTo('Records');
    const list = page.getByRole('region', { name: 'Experiments' });
    await list.getByRole('button', { name: 'Duplicate Experiment', exact: true }).click();
    await list.getByRole('button', { name: 'Delete Experiment (copy)' }).click();
    await list.getByText('Deleted experiments (1)').click();
    const question = page.getByRole('dialog', { name: 'Erase “Experiment (copy)” for good?' });
    await list.getByRole('button', { name: 'Erase Experiment (copy) for good' }).click();
    await question.getByRole('button', { name: 'Keep it' }).click();
    await list.getByRole('button', { name: 'Bring back Experiment (copy)' }).waitFor();
    await list.getByRole('button', { name: 'Erase Experiment (copy) for good' }).click();
    await question.getByText('saved sound are erased').waitFor();
    await question.getByRole('button', { name: 'Erase it' }).click();
    await list.getByText('Deleted experiments').waitFor({ state: 'detached' });
    await list.getByRole('button', { name: 'Open Experiment', exact: true }).waitFor();
    expect(current()?.faults).toEqual([]);
  });

  it('everything is erased on request, and nothing comes back', async () => {
    const bench = await open();
    const { page } = bench;
    await bench.addMarks(['10']);
    await saved(page);
    await bench.goTo('Records');
    await page.getByRole('button', { name: 'Erase everything…' }).click();
    const startedAnew = page.waitForEvent('load');
    await page.getByRole('button', { name: 'Erase everything', exact: true }).click();
    await startedAnew;
    await expect.poll(() => readings(bench)).toEqual([]);
    await page.reload();
    await expect.poll(() => readings(bench)).toEqual([]);
    await bench.goTo('Records');
    await page.getByText('Nothing is saved yet').waitFor();
  });
});

describe('two tabs', () => {
  it('the second is told, follows, takes over; the first is told and goes on with a copy', async () => {
    const first = await open();
    await first.addMarks(['10']);
    await saved(first.page);
    const second = new BenchPage(await first.page.context().newPage());
    await second.page.goto(inject('pageUrl'));
    await second.page.getByText('open in another tab').first().waitFor();
    await expect.poll(() => readings(second)).toEqual([10]);
    await second.addMarks(['99']);
    expect(await readings(second)).toEqual([10]);
    await first.addMarks(['20']);
    await expect.poll(() => readings(second)).toEqual([10, 20]);

    await second.page.getByRole('button', { name: 'Work on it here' }).click();
    await first.page.getByText('open in another tab').first().waitFor();
    await second.addMarks(['30']);
    await expect.poll(() => readings(first)).toEqual([10, 20, 30]);
    await first.page.getByRole('button', { name: 'Open a copy' }).click();
    await first.addMarks(['40']);
    await second.addMarks(['50']);
    await saved(first.page);
    await saved(second.page);
    await first.page.reload();
    await second.page.reload();
    await expect.poll(() => readings(first)).toEqual([10, 20, 30, 40]);
    await expect.poll(() => readings(second)).toEqual([10, 20, 30, 50]);
  });

  it('a tab that waits gets the experiment when the other one is closed', async () => {
    const first = await open();
    await first.addMarks(['10']);
    await saved(first.page);
    const second = new BenchPage(await first.page.context().newPage());
    await second.page.goto(inject('pageUrl'));
    await second.page.getByText('open in another tab').first().waitFor();
    await first.page.close();
    await expect.poll(() => second.page.getByText('open in another tab').count()).toBe(0);
    await second.addMarks(['20']);
    await saved(second.page);
    await second.page.reload();
    await expect.poll(() => readings(second)).toEqual([10, 20]);
  });

  it('without locks, as on plain http, nothing is overwritten and a copy saves both', async () => {
    const first = await open({
      beforeScripts: `Object.defineProperty(Navigator.prototype, 'locks', { get: () => undefined });`,
    });
    await first.addMarks(['10']);
    await saved(first.page);
    const second = new BenchPage(await first.page.context().newPage());
    await second.page.goto(inject('pageUrl'));
    await expect.poll(() => readings(second)).toEqual([10]);
    await first.addMarks(['20']);
    await saved(first.page);
    await second.addMarks(['30']);
    await second.page.getByText('This experiment was changed in another tab').waitFor();
    await second.page.getByRole('button', { name: 'Go on with a copy' }).click();
    await saved(second.page);
    await first.page.reload();
    await second.page.reload();
    await expect.poll(() => readings(first)).toEqual([10, 20]);
    await expect.poll(() => readings(second)).toEqual([10, 30]);
  });
});

describe('storage fails', () => {
  it('full: says so at once, goes on, gives the file, and saves all once there is room', async () => {
    const bench = await open();
    const { page } = bench;
    // Before the first write: Chromium goes by the room that it saw last.
    const control = await page.context().newCDPSession(page);
    const { origin } = new URL(inject('pageUrl'));
    await control.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
    await bench.addMarks(['10']);
    await bench.addMarks(['20']);
    await page.getByRole('alert').filter({ hasText: 'is full' }).waitFor({ timeout: 2000 });
    await bench.addMarks(['30']);
    const waiting = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the file' }).click();
    const file = JSON.parse(readFileSync(await (await waiting).path(), 'utf8')) as { marks: unknown[] };
    expect(file.marks).toHaveLength(3);
    await control.send('Storage.overrideQuotaForOrigin', { origin });
    await page.getByRole('button', { name: 'Try again' }).click();
    await saved(page);
    await page.reload();
    await expect.poll(() => readings(bench)).toEqual([10, 20, 30]);
  });

  it('refused by the browser’s own setting: says so at once, works, and gives the file', async () => {
    const profile = scratchFolder();
    mkdirSync(join(profile, 'Default'));
    const settings = { profile: { default_content_setting_values: { cookies: 2 } } };
    writeFileSync(join(profile, 'Default', 'Preferences'), JSON.stringify(settings));
    const browser = await openKillable(inject('chromiumPath'), profile, inject('pageUrl'));
    try {
      const bench = new BenchPage(browser.page);
      await browser.page
        .getByRole('alert')
        .filter({ hasText: 'doesn’t let the page save anything' })
        .waitFor({ timeout: 5000 });
      await bench.addMarks(['15.8']);
      await bench.addMarks(['49.2']);
      expect((await bench.speed()).speedMps).toBeGreaterThan(330);
      await browser.page.getByRole('button', { name: 'Save the file' }).waitFor();
    } finally {
      await browser.kill();
    }
  });

  it('wiped while the page is open: says so at once, keeps what it holds, and goes on', async () => {
    const bench = await open();
    const { page } = bench;
    await bench.addMarks(['10']);
    await saved(page);
    const control = await page.context().newCDPSession(page);
    const { origin } = new URL(inject('pageUrl'));
    await control.send('Storage.clearDataForOrigin', { origin, storageTypes: 'indexeddb' });
    await page.getByRole('alert').filter({ hasText: 'was erased' }).waitFor({ timeout: 2000 });
    await bench.addMarks(['20']);
    await saved(page);
    await page.reload();
    await expect.poll(() => readings(bench)).toEqual([10, 20]);
  });
});

describe('what lies in the store', () => {
  for (const record of RECORDS_OF_EVERY_VERSION) {
    it(`opens from the first bench’s store, schema ${record.schemaVersion}`, async () => {
      const bench = await open({ url: `${inject('pageUrl')}icon.svg` });
      await storeOfFirstVersion(bench.page, [record]);
      await bench.page.goto(inject('pageUrl'));
      await expect.poll(() => bench.lengths()).toEqual(['15.8', '']);
      await bench.goTo('Records');
      expect(await bench.page.getByRole('textbox', { name: 'Title' }).inputValue()).toBe(record.title);
      // The picture's own page asks the host for an icon that no host has.
      expect(current()?.faults.filter((fault) => !fault.includes('404'))).toEqual([]);
    });
  }

  it('a corrupt record is named, left as it is and given as a file; the page goes on beside it', async () => {
    const bench = await open({ url: `${inject('pageUrl')}icon.svg` });
    const { page } = bench;
    const corrupt = { id: 'corrupt', schemaVersion: 2, title: 'Half', marks: 'none' };
    await storeOfFirstVersion(page, [corrupt]);
    await page.goto(inject('pageUrl'));
    await page.getByRole('alert').filter({ hasText: 'couldn’t be read' }).waitFor();
    await bench.addMarks(['10']);
    await saved(page);
    await bench.goTo('Records');
    await page.getByText('A record that can’t be read').waitFor();
    const waiting = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save it as it is' }).click();
    expect(JSON.parse(readFileSync(await (await waiting).path(), 'utf8'))).toEqual(corrupt);
    expect(await recordInStore(page, SHARED_DATABASE, 'corrupt')).toEqual(corrupt);
    await page.reload();
    await bench.goTo('Measure');
    await expect.poll(() => readings(bench)).toEqual([10]);
  });
});
