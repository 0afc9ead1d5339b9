import { cpSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import type {} from '../../src/ui/appElement.ts';
import { exampleExperiment, exampleMark } from '../unit/notebook/exampleExperiment.ts';
import { BenchPage, scratchFolder } from './support/benchPage.ts';
import { eachBench } from './support/eachBench.ts';
import { serveSite } from './support/siteServer.ts';
import type { SiteServer } from './support/siteServer.ts';
import { SHARED_DATABASE, recordInStore, storeOfFirstVersion } from './support/storedRecords.ts';

const { open } = eachBench();

let server: SiteServer | null = null;

afterEach(async () => {
  await server?.close();
  server = null;
});

async function twoCopies(): Promise<{ one: string; two: string; picture: string }> {
  const folder = scratchFolder();
  for (const copy of ['one', 'two']) cpSync('dist', join(folder, copy), { recursive: true });
  server = await serveSite(folder, '/');
  return { one: `${server.url}one/`, two: `${server.url}two/`, picture: `${server.url}one/icon.svg` };
}

async function saved({ page }: BenchPage): Promise<void> {
  await expect
    .poll(() =>
      page.evaluate(
        () =>
          document.querySelector<HTMLElementTagNameMap['bench-app']>('bench-app:defined')?.session.saveState
            .kind,
      ),
    )
    .toBe('saved');
}

/** Until it is sure which notebook is open: before that every page is empty. */
async function isOpen({ page }: BenchPage): Promise<void> {
  await page.waitForFunction(
    () =>
      document.querySelector<HTMLElementTagNameMap['bench-app']>('bench-app:defined')?.session.keeping.sounds,
  );
}

describe('two copies of the site on one host', () => {
  it('have a notebook each, and erasing the one leaves the other', async () => {
    const { one, two } = await twoCopies();
    const first = await open({ url: one });
    await first.addMarks(['10']);
    await saved(first);
    const second = new BenchPage(await first.page.context().newPage());
    await second.page.goto(two);
    await isOpen(second);
    expect(await second.lengths()).toEqual([]);
    await second.addMarks(['20']);
    await saved(second);
    await second.goTo('Records');
    await second.page.getByRole('button', { name: 'Erase everything…' }).click();
    const startedAnew = second.page.waitForEvent('load');
    await second.page.getByRole('button', { name: 'Erase everything', exact: true }).click();
    await startedAnew;
    await saved(first);
    await first.page.reload();
    await expect.poll(() => first.lengths()).toEqual(['10']);
    await first.goTo('Records');
    expect(await first.page.getByText('older experiments').count()).toBe(0);
  });

  const old = exampleExperiment([exampleMark('a', { lengthM: 0.158 })]);

  it('the notebook from before belongs to the copy that comes first; the other says where it is', async () => {
    const { one, two, picture } = await twoCopies();
    const bench = await open({ url: picture });
    const { page } = bench;
    await storeOfFirstVersion(page, [old]);
    await page.goto(one);
    await expect.poll(() => bench.lengths()).toEqual(['15.8']);
    await page.goto(two);
    await isOpen(bench);
    expect(await bench.lengths()).toEqual([]);
    await bench.goTo('Records');
    expect(await page.getByRole('link', { name: 'open /one/' }).getAttribute('href')).toBe('/one/');
    await page.goto(one);
    await expect.poll(() => bench.lengths()).toEqual(['15.8']);
    await bench.addMarks(['20']);
    await saved(bench);
    expect(await recordInStore(page, SHARED_DATABASE, old.id)).toMatchObject({
      marks: [{ lengthM: 0.158 }, { lengthM: 0.2 }],
    });
  });

  it('it waits for the copy that was used here, where the browser shows which', async () => {
    const { one, two, picture } = await twoCopies();
    // Else this copy's own worker would come into play.
    const bench = await open({ url: picture, serviceWorkers: 'block' });
    const { page } = bench;
    await storeOfFirstVersion(page, [old]);
    await page.evaluate((address) => caches.open(`air-column-bench ${address} 0123456789abcdef`), two);
    await page.goto(one);
    await isOpen(bench);
    expect(await bench.lengths()).toEqual([]);
    await bench.goTo('Records');
    await page.getByText('Open that copy to see them').waitFor();
    await page.goto(two);
    await expect.poll(() => bench.lengths()).toEqual(['15.8']);
  });
});
