import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, it } from 'vitest';
import { BenchPage } from './support/benchPage.ts';
import { openBrowser, openPage } from './support/openPage.ts';
import type { OpenedPage } from './support/openPage.ts';

/**
 * What a person can do on the bench, point by point, at a laptop's and at a phone's size. Input and fork, working, compare,
 * turn it round and lessons are in benchViews.test.ts, the microphone and recordings in mainJob.test.ts.
 */

let browser: Browser;
let opened: OpenedPage | null = null;

beforeAll(async () => {
  browser = await openBrowser({ chromiumPath: inject('chromiumPath') });
});

afterAll(() => browser.close());

afterEach(async () => {
  expect(opened?.faults ?? []).toEqual([]);
  await opened?.close();
  opened = null;
});

describe.each([
  { width: 1280, height: 800 },
  { width: 390, height: 844 },
])('at $width px', (viewport) => {
  async function open(): Promise<BenchPage> {
    opened = await openPage({
      chromiumPath: inject('chromiumPath'),
      url: inject('pageUrl'),
      browser,
      viewport,
    });
    return new BenchPage(opened.page);
  }

  it('apparatus, marks, speed, records: typed by hand, from the forks to the files', async () => {
    const bench = await open();
    const { page } = bench;
    await bench.goTo('Apparatus');
    await page.getByRole('combobox', { name: 'Add a fork' }).selectOption({ label: '384 Hz' });
    await bench.fill('Inside diameter', '3,5 cm');
    await bench.fill('Air temperature', '70 °F');
    await bench.fill('Zero offset', '2 mm');
    await bench.goTo('Measure');
    await page.getByRole('combobox', { name: 'Fork' }).selectOption({ label: '512 Hz' });
    // A bracket around the first resonance, single lengths for the others; the offset is on all of them.
    await bench.addMarks(['15.3 – 16.5', '49,4', '83.0 cm']);
    const bracket = page.getByRole('group', { name: 'Mark 1', exact: true });
    await bracket.getByText('in the middle: 15.90 cm, standard uncertainty 0.35 cm').waitFor();
    expect(await bench.lengthOf(1).inputValue()).toBe('15.3 – 16.5');
    const { speedMps } = await bench.speed();
    // Steps of 33.6 cm: 2 · 0.336 m · 512 Hz = 344.1 m/s in the tube.
    expect(Math.abs(speedMps - 345.4)).toBeLessThan(2);
    await page.getByText(/Best next: \w+ resonance, \d+ Hz fork/).waitFor();

    await bench.deleteMark(3);
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect.poll(() => bench.marks.count()).toBe(3);

    const csv = readFileSync(await bench.saveCsv(), 'utf8');
    expect(csv).toContain('other_length_cm');
    expect(csv.split('\n').filter((row) => row.startsWith('512'))).toHaveLength(3);
    const json = JSON.parse(readFileSync(await bench.saveJson(), 'utf8')) as { marks?: unknown[] };
    expect(JSON.stringify(json)).toContain('"otherLengthM":0.165');
  });

  it('slide: a resonance is flagged, passed again on the way back it is counted once, and the way back is shown', async () => {
    const bench = await open();
    const { page } = bench;
    const handle = page.getByRole('slider', { name: 'Length of the column' });
    await handle.fill('12');
    await bench.listen();
    await page.getByText('Strike the fork and hold it at the mouth').waitFor();
    await page.getByRole('button', { name: 'Strike the fork' }).click();
    await page.getByText('Drag the handle slowly to the far end').waitFor();
    await handle.fill('20');
    await bench.lengthOf(1).waitFor({ timeout: 30_000 });
    await page
      .getByRole('status')
      .getByText(/Resonance found/)
      .waitFor();
    await page.getByText(/too long: push in/).waitFor();
    await handle.fill('12');
    const first = page.getByRole('group', { name: 'Mark 1', exact: true });
    await first.getByText(/Repeat.* at [\d.]+ s/).waitFor({ timeout: 30_000 });
    expect(await bench.marks.count()).toBe(1);
    await bench.stop();
    await first.getByRole('button', { name: 'Separate the repeat from mark 1' }).click();
    expect(await bench.marks.count()).toBe(2);
    await page.getByRole('button', { name: 'Mark 2 is the same resonance as mark 1' }).click();
    expect(await bench.marks.count()).toBe(1);
  });

  it('check a length: on resonance it says so, off resonance it never does', async () => {
    const bench = await open();
    const { page } = bench;
    await bench.goTo('Check');
    const card = page.getByRole('region', { name: 'Check a length' });
    const handle = page.getByRole('slider', { name: 'Length of the column' });
    // The practice tube's first resonance with 512 Hz at 21 °C: (343.0/2048 − 0.0106) m = 15.7 cm.
    for (const [lengthCm, verdict] of [
      ['30', /^[✕?] (Not resonant|Can’t tell yet)$/],
      ['15.7', /^✓ Resonant$/],
    ] as const) {
      await handle.fill(lengthCm);
      await bench.listen();
      await page.getByText('Strike the fork and hold it at the mouth').waitFor();
      await card.getByRole('button', { name: 'Begin the check' }).click();
      await page.getByRole('button', { name: 'Strike the fork' }).click();
      for (let comings = 0; comings < 7; comings += 1) {
        await page.waitForTimeout(1800);
        await page.keyboard.press('f');
      }
      await card.getByText(verdict).waitFor({ timeout: 15_000 });
      await card.getByText(/louder by [−\d.]+ ± [\d.]+ dB/).waitFor();
      await page.getByRole('button', { name: 'Damp it' }).click();
      await page.waitForTimeout(500);
      await bench.stop();
      if ((await page.getByRole('button', { name: 'Fork at the mouth', pressed: false }).count()) > 0) {
        await page.keyboard.press('f');
      }
    }
    expect(await bench.marks.count()).toBe(0);
  });

  it('a column of fixed length is swept on the practice column and gives a speed that can be kept', async () => {
    const bench = await open();
    const { page } = bench;
    await bench.enterApparatus({ diameterMm: 35, temperatureC: 21 });
    await bench.goTo('Check');
    const card = page.getByRole('region', { name: 'Sweep a fixed column' });
    await card.getByText(/Turn the device’s own volume down first/).waitFor();
    await card.getByRole('button', { name: 'Start the sweep' }).click();
    await card.getByRole('alert').getByText('Type the length').waitFor();
    await card.getByRole('textbox', { name: 'Length of the swept column' }).fill('60');
    await card.getByRole('textbox', { name: 'Length of the swept column' }).press('Tab');
    // One resonance is enough here: 3·343/(4·0.611) = 421 Hz.
    await card.getByRole('textbox', { name: 'Sweep from' }).fill('380');
    await card.getByRole('textbox', { name: 'Sweep from' }).press('Tab');
    await card.getByRole('textbox', { name: 'Sweep to' }).fill('460');
    await card.getByRole('textbox', { name: 'Sweep to' }).press('Tab');
    await card.getByText('takes 13 s').waitFor();
    await card.getByRole('button', { name: 'Start the sweep' }).click();
    await card.getByRole('button', { name: 'Cancel the sweep' }).waitFor();
    await card.getByText(/^34\d\.\d* ± [\d.]+ m\/s$/).waitFor({ timeout: 60_000 });
    await card.getByRole('row', { name: /2nd 42\d\.\d* ± [\d.]+ Hz/ }).waitFor();
    await card.getByRole('img', { name: /Level against the frequency of the tone/ }).waitFor();
    await card.getByRole('button', { name: 'Add it to the notes' }).click();
    await bench.goTo('Records');
    await expect
      .poll(() => page.getByRole('textbox', { name: /note/i }).first().inputValue())
      .toMatch(/Sweep at 60\.00 cm: 2nd 42/);
  });

  it('the wave is drawn as pressure or displacement, or not at all, and expected lengths come and go', async () => {
    const bench = await open();
    const { page } = bench;
    const column = page.getByRole('img', { name: /^Air column/ });
    const pressure = await column.innerHTML();
    await page.getByRole('combobox', { name: 'Wave drawn' }).selectOption('displacement');
    await expect.poll(() => column.innerHTML()).not.toBe(pressure);
    await page.getByRole('combobox', { name: 'Wave drawn' }).selectOption('nothing');
    await page.getByRole('checkbox', { name: 'Expected lengths' }).uncheck();
    await expect.poll(() => column.innerHTML()).not.toMatch(/class="(wave|expected)/);
  });

  it('end correction against diameter: the open experiment’s tube stands in the picture', async () => {
    const bench = await open();
    await bench.enterApparatus({ diameterMm: 35, temperatureC: 21 });
    await bench.addMarks(['15.7', '49.25', '82.8']);
    await bench.goTo('Compare');
    await bench.page.getByRole('img', { name: /End correction against diameter.*35\.0 mm: \d/ }).waitFor();
  });
});
