import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, describe, expect, inject, it } from 'vitest';
import { BenchPage, scratchFolder } from './support/benchPage.ts';
import { filmOf, pictureOf, readPicture } from './support/codePicture.ts';
import type { CodePicture } from './support/codePicture.ts';
import { openBrowser, openPage } from './support/openPage.ts';
import type { OpenedPage } from './support/openPage.ts';

const GROUPS = 30;
const opened: OpenedPage[] = [];

afterEach(async () => {
  const faults = opened.flatMap((one) => one.faults);
  for (const one of opened.splice(0)) await one.close();
  expect(faults).toEqual([]);
});

async function open(options: Partial<Parameters<typeof openPage>[0]> = {}): Promise<OpenedPage> {
  const one = await openPage({ chromiumPath: inject('chromiumPath'), url: inject('pageUrl'), ...options });
  opened.push(one);
  return one;
}

/** Lengths of a closed 30 mm tube at 21 °C and 512 Hz, each group's read some tenths of a millimetre off. */
const lengthsOf = (group: number): readonly string[] =>
  [15.8, 49.25, 82.8].map((cm, i) => (cm + (((group * 7 + i * 3) % 31) - 15) / 200).toFixed(3));

/** A group's marks and name typed in, and its code on the screen. */
async function handIn(page: Page, group: number): Promise<string> {
  const bench = new BenchPage(page);
  await bench.addMarks(lengthsOf(group));
  await bench.goTo('Records');
  await page.getByRole('textbox', { name: 'Group', exact: true }).fill(`Table ${group}`);
  await page.getByRole('button', { name: 'Show the code' }).click();
  await page.getByText(`Table ${group}: 3 marks`).waitFor();
  return page.getByRole('textbox', { name: 'The same as a link' }).inputValue();
}

describe('a class without a network', () => {
  it(
    'thirty groups reach the teacher by the codes on their screens, and stay over a reload',
    { timeout: 400_000 },
    async () => {
      const browser = await openBrowser({ chromiumPath: inject('chromiumPath') });
      try {
        const reader = await browser.newPage();
        const codes: string[] = [];
        for (let group = 1; group <= GROUPS; group += 1) {
          const student = await openPage({ chromiumPath: '', url: inject('pageUrl'), browser });
          const link = await handIn(student.page, group);
          const said = readPicture(await pictureOf(student.page.locator('bench-code svg'), reader));
          expect(said, `code of table ${group}`).toBe(link);
          codes.push(said ?? '');
          expect(student.faults).toEqual([]);
          await student.close();
        }
        const { page } = await open();
        for (const code of codes) {
          // As a link that is opened where the bench is open already.
          await page.evaluate((hash) => (location.hash = hash), code.slice(code.indexOf('#')));
          await page.getByText(/Added: .* has \d+ rows?/).waitFor();
          await page.getByRole('button', { name: 'Close' }).click();
        }
        const table = page.getByRole('region', { name: 'Table of groups' });
        await expect.poll(() => table.getByRole('row').count()).toBe(GROUPS + 1);
        await page.getByText(`${GROUPS} of ${GROUPS} groups counted.`).waitFor();
        // One that comes again is known.
        await page.evaluate(
          (hash) => (location.hash = hash),
          (codes[4] ?? '').slice((codes[4] ?? '').indexOf('#')),
        );
        await page.getByText('Here already, unchanged: “Table 5”').waitFor();
        await page.reload();
        await expect.poll(() => table.getByRole('row').count()).toBe(GROUPS + 1);
        await page.getByRole('button', { name: 'Empty the class view' }).click();
        await page.reload();
        await page.getByRole('button', { name: 'Read codes with the camera' }).waitFor();
        expect(await table.count()).toBe(0);
      } finally {
        await browser.close();
      }
    },
  );

  it('the class view reads a code by its own camera, which is asked for by a press alone', async () => {
    const student = await open({ viewport: { width: 800, height: 680 } });
    await handIn(student.page, 3);
    const reader = await student.context.newPage();
    const picture: CodePicture = await pictureOf(student.page.locator('bench-code svg'), reader);
    const film = join(scratchFolder(), 'code.y4m');
    writeFileSync(film, filmOf(picture));
    const { page, context } = await open({
      url: `${inject('pageUrl')}#class`,
      args: [`--use-file-for-fake-video-capture=${film}`],
      beforeScripts: `
        window.asked = 0;
        const devices = navigator.mediaDevices;
        const ask = devices.getUserMedia.bind(devices);
        devices.getUserMedia = (wanted) => { window.asked += 1; return ask(wanted); };`,
    });
    await context.grantPermissions(['camera']);
    const press = page.getByRole('button', { name: 'Read codes with the camera' });
    await press.waitFor();
    const asked = (): Promise<number> => page.evaluate(() => (window as unknown as { asked: number }).asked);
    expect(await asked()).toBe(0);
    await press.click();
    await page.getByText('Added: “Table 3”. The table of groups has 1 row.').waitFor();
    expect(await asked()).toBe(1);
    await page.getByRole('button', { name: 'Stop the camera' }).click();
    expect(await page.locator('bench-code-reader video').count()).toBe(0);
  });

  it('a lesson is projected as a code that another reader reads', async () => {
    const { page, context } = await open();
    const bench = new BenchPage(page);
    await bench.goTo('Records');
    await page.getByRole('textbox', { name: 'What to measure' }).fill('Find three resonances – twice.');
    await page.getByRole('button', { name: 'Make the link' }).click();
    const link = await page.getByRole('textbox', { name: 'Link', exact: true }).inputValue();
    await page.getByRole('button', { name: 'Show it as a QR code' }).click();
    const reader = await context.newPage();
    await reader.goto('about:blank');
    expect(readPicture(await pictureOf(page.locator('bench-code svg'), reader))).toBe(link);
  });
});
