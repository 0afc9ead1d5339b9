import { readFileSync } from 'node:fs';
import type { Locator } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { eachBench } from './support/eachBench.ts';

const { open } = eachBench(true);

async function boxOf(locator: Locator): Promise<{ y: number; height: number }> {
  const box = await locator.boundingBox();
  if (box === null) throw new Error('It is not to be seen.');
  return { y: box.y, height: box.height };
}

for (const viewport of [
  { width: 1280, height: 800 },
  { width: 390, height: 844 },
]) {
  describe(`views at ${viewport.width} px`, () => {
    it('input and fork: raw, input, room, and the fork’s real frequency, which can be used', async () => {
      const bench = await open({ viewport });
      await bench.goTo('Check');
      await bench.listen();
      await bench.page.waitForTimeout(3000);
      await bench.page.getByRole('button', { name: 'Strike the fork' }).click();
      const check = bench.page.getByRole('region', { name: 'Input and fork' });
      await check.getByText(/5\d\d\.\d+ ± [\d.]+ Hz, .* from its stamp/).waitFor({ timeout: 20_000 });
      await check.getByText('nothing processes this source').waitFor();
      await check.getByRole('button', { name: 'Use the measured frequency in the fit' }).click();
      await bench.goTo('Apparatus');
      const forks = bench.page.getByRole('region', { name: 'Forks' });
      await expect
        .poll(() => forks.innerText())
        .toMatch(/Measured 5\d\d\.\d+ ± [\d.]+ Hz; the fit uses this/);
    });

    it('working, fit and budget: every step with its numbers; pictures saved as SVG and PNG; what next', async () => {
      const bench = await open({ viewport });
      await bench.addMarks(['15.8', '49.2', '82.7']);
      await bench.goTo('Working');
      const { page } = bench;
      await page.getByRole('heading', { name: 'Expanded uncertainty' }).waitFor();
      await page.getByRole('row', { name: /Frequency of the 512 Hz fork/ }).waitFor();
      await page
        .getByRole('region', { name: 'What next' })
        .getByText(/% less/)
        .first()
        .waitFor();
      const fit = page.getByRole('img', { name: /Length against the time/ });
      expect(await fit.evaluate((image) => (image as HTMLImageElement).naturalWidth)).toBeGreaterThan(0);
      for (const [type, head] of [
        ['SVG', '<svg'],
        ['PNG', '\x89PNG'],
      ] as const) {
        const waiting = page.waitForEvent('download');
        await page.getByRole('button', { name: new RegExp(`Save “Length against.*as ${type}`) }).click();
        const path = await (await waiting).path();
        expect(readFileSync(path).toString('latin1').startsWith(head)).toBe(true);
      }
    });

    it('compare: two places at two temperatures; turn it round', async () => {
      const bench = await open({ viewport });
      const { page } = bench;
      await bench.enterApparatus({ diameterMm: 35, temperatureC: 21 });
      await bench.addMarks(['15.7', '49.25']);
      await bench.goTo('Compare');
      await page.getByText(/There is only “Lab” to compare yet/).waitFor();
      await page
        .getByRole('region', { name: 'Turn it round' })
        .getByText(/51\d\.?\d* ± [\d.]+ Hz/)
        .waitFor();
      await bench.goTo('Apparatus');
      await page.getByRole('button', { name: 'Add a place' }).click();
      const cold = page.getByRole('group', { name: 'Place 2' });
      await cold.getByRole('textbox', { name: 'Name' }).fill('Cold store');
      await cold.getByRole('textbox', { name: 'Air temperature' }).fill('4');
      await cold.getByRole('textbox', { name: 'Air temperature' }).press('Tab');
      await bench.goTo('Measure');
      await bench.addMarks(['15.2', '47.75']);
      await bench.goTo('Compare');
      await page
        .getByText(/“Lab” against “Cold store”: [\d.]+ m\/s faster.*The difference is real/)
        .waitFor();
    });

    it('lesson: a link sets up forks, column and task, and keeps the expected lengths and theory back', async () => {
      const bench = await open({ viewport });
      const { page } = bench;
      await page.getByRole('combobox', { name: 'Column' }).selectOption('open at both ends');
      await bench.goTo('Records');
      await page.getByRole('textbox', { name: 'What to measure' }).fill('Find two resonances.');
      await page.getByText(/“Show the true values” still gives the speed of sound away/).waitFor();
      await page.getByRole('checkbox', { name: 'Hide the predicted speed' }).check();
      await page.getByRole('button', { name: 'Make the link' }).click();
      const link = await page.getByRole('textbox', { name: 'Link', exact: true }).inputValue();
      expect(link).toContain('#lesson=');
      // A link that is shown follows the form: a later tick is in it.
      await page.getByRole('checkbox', { name: 'Hide where resonances are expected' }).check();
      await expect
        .poll(() => page.getByRole('textbox', { name: 'Link', exact: true }).inputValue())
        .not.toBe(link);
      await page.getByRole('checkbox', { name: 'Hide where resonances are expected' }).uncheck();
      await expect
        .poll(() => page.getByRole('textbox', { name: 'Link', exact: true }).inputValue())
        .toBe(link);
      await page.goto('about:blank');
      await page.goto(link);
      await page.getByText('Find two resonances.').waitFor();
      expect(await page.getByRole('combobox', { name: 'Column' }).inputValue()).toBe('open');
      await bench.goTo('Compare');
      await page.getByText('This lesson hides the predicted speed.').waitFor();
    });
  });
}

describe('on a phone', () => {
  const viewport = { width: 390, height: 844 };

  it('the report sets a row’s cells under each other, each with its column’s name, and shows the narrow pictures', async () => {
    const bench = await open({ viewport });
    await bench.addMarks(['15.8', '49.2']);
    const { page } = bench;
    await page.evaluate(() => (location.hash = '#report'));
    const row = page.getByRole('table', { name: 'Table of marks' }).locator('tbody tr').first();
    // The report comes with its view.
    await row.waitFor();
    const cells = await row.locator('td').evaluateAll((all) =>
      all.map((cell) => ({
        name: getComputedStyle(cell, '::before').content,
        text: cell.textContent,
        right: cell.getBoundingClientRect().right,
      })),
    );
    expect(cells[2]).toMatchObject({ name: '"Length, cm"', text: '15.80' });
    expect(cells[5]).toMatchObject({ name: '"Remarks"', text: 'by hand' });
    expect(Math.max(...cells.map(({ right }) => right))).toBeLessThan(390);
    const widths = await page
      .locator('bench-report figure svg:visible')
      .evaluateAll((all) => all.map((svg) => [svg.getAttribute('width'), svg.getBoundingClientRect().right]));
    expect(widths.map(([drawnPx]) => drawnPx)).toEqual(['400', '400', '400']);
    expect(Math.max(...widths.map(([, right]) => Number(right)))).toBeLessThan(390);
  });

  it('the report of a laptop and of paper keeps its tables and the wide pictures', async () => {
    const bench = await open();
    await bench.addMarks(['15.8', '49.2']);
    const { page } = bench;
    await page.evaluate(() => (location.hash = '#report'));
    await page.getByRole('columnheader', { name: 'Remarks' }).waitFor();
    for (const [media, size] of [
      ['screen', { width: 1280, height: 800 }],
      ['print', viewport],
    ] as const) {
      await page.emulateMedia({ media });
      await page.setViewportSize(size);
      expect(await page.getByRole('columnheader', { name: 'Remarks' }).isVisible()).toBe(true);
      const drawn = await page
        .locator('bench-report figure svg:visible')
        .evaluateAll((all) => all.map((svg) => svg.getAttribute('width')));
      expect({ media, drawn }).toEqual({ media, drawn: ['640', '640', '640'] });
    }
  });

  it('while it listens, the column’s fine steps stay above a notice of two lines', async () => {
    const bench = await open({ viewport });
    const { page } = bench;
    await bench.addMarks(['15.8', '49.2']);
    await bench.listen();
    await page.getByRole('button', { name: 'Stop' }).waitFor();
    await bench.deleteMark(2);
    const words = page.getByText('Mark deleted. You can bring it back below the list.');
    await words.waitFor();
    await page.evaluate(() => scrollTo(0, 0));
    const bar = await words.locator('..').boundingBox();
    const step = await page.getByRole('button', { name: 'One millimetre longer' }).boundingBox();
    if (bar === null || step === null) throw new Error('The notice or the step is not to be seen.');
    expect(step.y + step.height).toBeLessThanOrEqual(bar.y);
  });
});

describe('the line along the lower edge', () => {
  for (const viewport of [
    { width: 1366, height: 768 },
    { width: 1280, height: 800 },
    { width: 820, height: 1180 },
  ]) {
    it(`covers none of the practice column’s hands at ${viewport.width} × ${viewport.height} px, and stays as high with a message`, async () => {
      const bench = await open({ viewport });
      const { page } = bench;
      const desk = page.getByRole('region', { name: 'Practice column' });
      const line = page.getByRole('contentinfo');
      await page.getByRole('combobox', { name: 'Wave drawn' }).waitFor();
      const before = await boxOf(line);
      await page.getByRole('button', { name: 'Strike the fork' }).click();
      await page.getByRole('button', { name: 'Stop' }).waitFor();
      await page.locator('body').press('m');
      await page.locator('body').press('m');
      await bench.deleteMark(2);
      await line.getByText('Mark deleted. You can bring it back below the list.').waitFor();
      await page.evaluate(() => scrollTo(0, 0));
      const hands = await boxOf(desk);
      expect(hands.y + hands.height).toBeLessThanOrEqual((await boxOf(line)).y);
      expect(await boxOf(line)).toEqual(before);
    });
  }
});

describe('the head', () => {
  // 378 px: a phone of 390 whose scroll bar takes its own room.
  it.each([1280, 378])(
    'has every view’s name in the same place at %i px, whichever is open',
    async (width) => {
      const bench = await open({ viewport: { width, height: 844 } });
      const links = bench.page.getByRole('navigation', { name: 'Views' }).getByRole('link');
      const places = (): Promise<number[]> =>
        links.evaluateAll((all) => all.map((link) => link.getBoundingClientRect().x));
      const before = await places();
      const rows = await links.evaluateAll((all) => all.map((link) => link.getBoundingClientRect().y));
      expect(new Set(rows).size).toBe(1);
      await bench.goTo('Apparatus');
      expect(await places()).toEqual(before);
      await bench.goTo('Compare');
      expect(await places()).toEqual(before);
    },
  );
});

describe('the system’s own colours', () => {
  it('are taken by strip and pictures as soon as they are switched on', async () => {
    const bench = await open();
    const { page } = bench;
    await bench.addMarks(['15.8', '49.2', '82.7']);
    await bench.listen();
    await page.waitForTimeout(1500);
    await bench.stop();
    const strip = page.getByRole('img', { name: /^Level of the last minute/ });
    const drawn = (): Promise<string> =>
      strip.evaluate((canvas) => (canvas as HTMLCanvasElement).toDataURL());
    const before = await drawn();
    expect(await drawn()).toBe(before);
    await page.emulateMedia({ forcedColors: 'active' });
    await expect.poll(drawn).not.toBe(before);
    await page.emulateMedia({ forcedColors: 'none' });
    await bench.goTo('Working');
    const fit = page.getByRole('img', { name: /Length against the time/ });
    const source = await fit.getAttribute('src');
    await page.emulateMedia({ forcedColors: 'active' });
    await expect.poll(() => fit.getAttribute('src')).not.toBe(source);
  });
});

describe('hands on the bench', () => {
  it('a length typed is one step to undo, though the keyboard then goes on to the next', async () => {
    const bench = await open();
    const { page } = bench;
    await page.locator('body').press('m');
    await page.locator('body').press('m');
    await bench.lengthOf(2).click();
    await page.keyboard.type('49.2');
    await page.keyboard.press('Enter');
    await page.keyboard.type('15.8');
    await page.keyboard.press('Enter');
    await expect.poll(() => bench.lengths()).toEqual(['15.8', '49.2']);
    await page.getByRole('button', { name: 'Undo: type length' }).click();
    await expect.poll(() => bench.lengths()).toEqual(['', '49.2']);
    await page.getByRole('button', { name: 'Undo: type length' }).click();
    await expect.poll(() => bench.lengths()).toEqual(['', '']);
    await page.getByRole('button', { name: 'Undo: add mark' }).waitFor();
  });

  it('the guide follows what is done', async () => {
    const bench = await open();
    const { page } = bench;
    await page.getByText('Press Listen and wait a moment.').waitFor();
    await page.getByRole('button', { name: 'Note these readings' }).click();
    await page.getByText('Guide, 1 of 7: Press Listen and wait a moment.').waitFor();
    // Done is done: the offer goes at once.
    await page.getByRole('button', { name: 'Note these readings' }).waitFor({ state: 'detached' });
    await bench.listen();
    await page.getByText('Guide, 2 of 7: Strike the fork and hold it at the mouth.').waitFor();
  });

  it('practice takes the tube as it was noted, and its readings leave the experiment’s own as they are', async () => {
    const bench = await open();
    const { page } = bench;
    await bench.enterApparatus({ diameterMm: 32, temperatureC: 24 });
    await page.getByText('tube 32.0 mm wide inside. The present place is another room').waitFor();
    await page.getByRole('button', { name: 'Note these readings' }).click();
    await page.getByRole('button', { name: 'Note these readings' }).waitFor({ state: 'detached' });
    await expect
      .poll(() => page.getByRole('combobox', { name: 'Place' }).locator('option:checked').innerText())
      .toContain('Practice column');
    await bench.goTo('Apparatus');
    const values = (name: string): Promise<string[]> =>
      page
        .getByRole('textbox', { name, exact: true })
        .evaluateAll((inputs) => inputs.map((input) => (input as HTMLInputElement).value));
    expect(await values('Inside diameter')).toEqual(['32']);
    expect(await values('Air temperature')).toEqual(['24', '21']);
  });

  it('a tone is played, starting quiet, and stops', async () => {
    const bench = await open();
    await bench.goTo('Check');
    await bench.page.getByRole('button', { name: 'Play the tone' }).click();
    await bench.page.getByRole('button', { name: 'Stop the tone' }).click();
    await bench.page.getByRole('button', { name: 'Play the tone' }).waitFor();
  });
});

describe('a page that is slow to load', () => {
  it('is dark from the start where the system is', async () => {
    const bench = await open({ colorScheme: 'dark', serviceWorkers: 'block' });
    const { page } = bench;
    const ground = (): Promise<string> =>
      page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
    const dark = 'rgb(23, 25, 28)';
    expect(await ground()).toBe(dark);
    let deliver = (): void => undefined;
    const held = new Promise<void>((resolve) => (deliver = resolve));
    await page.route('**/*.js', async (route) => {
      await held;
      await route.continue();
    });
    await page.reload({ waitUntil: 'commit' });
    await page.getByText('Air Column Bench is loading.').waitFor();
    expect(await page.locator('html').getAttribute('data-theme')).toBeNull();
    // The text may be there before the style sheet is; no browser draws it until then. The script is still held.
    await expect.poll(ground).toBe(dark);
    deliver();
    await bench.opened();
    expect(await ground()).toBe(dark);
  });
});

describe('a view that is slow to load', () => {
  it('doesn’t bring back who has gone on meanwhile', async () => {
    // A worker that is ready by now would answer from its store, and nothing would be held.
    const bench = await open({ serviceWorkers: 'block' });
    const { page } = bench;
    let deliver = (): void => undefined;
    const held = new Promise<void>((resolve) => (deliver = resolve));
    await page.route('**/checkElement*.js', async (route) => {
      await held;
      await route.continue();
    });
    const asked = page.waitForRequest('**/checkElement*.js');
    await bench.linkTo('Check').click();
    await asked;
    await bench.goTo('Apparatus');
    await page.getByRole('region', { name: 'Forks' }).waitFor();
    const arrived = page.waitForResponse('**/checkElement*.js');
    deliver();
    await (await arrived).finished();
    await page.waitForTimeout(300);
    expect(await page.getByRole('region', { name: 'Forks' }).isVisible()).toBe(true);
    // And the view opens when it is wanted again.
    await bench.goTo('Check');
    await page.getByRole('region', { name: 'Input and fork' }).waitFor();
  });
});
