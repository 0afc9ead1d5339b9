import { readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import { describe, expect, inject, it } from 'vitest';
import { FIRST_TEXTS, LATER_TEXTS } from '../../src/words/loadTexts.ts';
import { LANGUAGES, LANGUAGE_TAGS } from '../../src/words/language.ts';
import type { Language } from '../../src/words/language.ts';
import { eachBench } from './support/eachBench.ts';
import { layoutFaults } from './support/layoutFaults.ts';
import { openPage } from './support/openPage.ts';
import { stretchTexts } from './support/stretchedTexts.ts';

const { open } = eachBench(true);

const SIZES = [
  { width: 1280, height: 800 },
  { width: 820, height: 1180 },
  { width: 390, height: 844 },
] as const;
const VIEWS = ['measure', 'apparatus', 'check', 'working', 'compare', 'records', 'report', 'class'] as const;

const textsOf = async (tag: Language) => ({
  ...(await FIRST_TEXTS[tag]()).first,
  ...(await LATER_TEXTS[tag]()).later,
});

describe('the main job in another language', () => {
  it.each(['de', 'pl'] as const)(
    'in %s: lengths typed with commas, a report, a file that opens in a Spanish class with the same speed',
    async (tag) => {
      const said = await textsOf(tag);
      const { page } = await open({ locale: tag });
      expect(await page.locator('html').getAttribute('lang')).toBe(tag);
      const views = page.getByRole('navigation');
      await views.getByRole('link', { name: said.frame.viewNames.apparatus, exact: true }).click();
      for (const [label, text] of [
        [said.tube.diameter, '35,0'],
        [said.places.temperature, '21,5'],
      ] as const) {
        const field = page.getByRole('textbox', { name: label, exact: true });
        await field.fill(text);
        await field.press('Tab');
      }
      await views.getByRole('link', { name: said.frame.viewNames.measure, exact: true }).click();
      for (const text of ['15,8', '49,4', '83,0']) {
        const field = page.getByRole('textbox', { name: said.marks.newLength, exact: true });
        await field.fill(text);
        await field.press('Enter');
      }
      // 512 Hz, 16.8 cm apart by quarters: 2 · 512 Hz · 33.6 cm = 344.1 m/s, and up to 0.7 % more in free air.
      const speed = /(\d+),(\d+) ± (\d+),(\d+) m\/s/;
      const shown = speed.exec(await page.getByRole('region', { name: said.result.region }).innerText());
      expect(Number(shown?.[1])).toBeGreaterThanOrEqual(344);
      expect(Number(shown?.[1])).toBeLessThanOrEqual(346);

      await page.goto(`${inject('pageUrl')}#report`);
      await page.getByRole('heading', { name: said.marksPart.heading, exact: true }).waitFor();
      expect(await page.locator('bench-report').innerText()).toContain(shown?.[0].replace(' m/s', ''));

      await views.getByRole('link', { name: said.frame.viewNames.records, exact: true }).click();
      const waiting = page.waitForEvent('download');
      await page.getByRole('button', { name: said.files.save, exact: true }).click();
      const path = await (await waiting).path();
      expect(readFileSync(path, 'utf8')).toContain('0.158');

      const spanish = await textsOf('es');
      const other = await openPage({
        chromiumPath: inject('chromiumPath'),
        url: `${inject('pageUrl')}#class`,
        locale: 'es-ES',
      });
      try {
        await other.page.getByRole('heading', { name: spanish.classPage.heading, exact: true }).waitFor();
        await other.page.getByLabel(spanish.bringIn.filesName, { exact: true }).setInputFiles(path);
        await other.page.getByRole('button', { name: spanish.intakePage.toClass, exact: true }).click();
        await other.page
          .getByText(`${shown?.[1]},${shown?.[2]} ± ${shown?.[3]},${shown?.[4]}`)
          .first()
          .waitFor();
      } finally {
        await other.close();
      }
    },
  );
});

describe('every language', () => {
  it.each(LANGUAGE_TAGS)(
    '%s: axe finds nothing, and nothing is cut or covered, on a phone and a laptop',
    async (tag) => {
      const { page } = await open({ locale: tag, viewport: SIZES[2] });
      const said = await textsOf(tag);
      for (const text of ['15.8', '49.4', '30']) {
        const field = page.getByRole('textbox', { name: said.marks.newLength, exact: true });
        await field.fill(text);
        await field.press('Enter');
      }
      for (const view of VIEWS) {
        await page.evaluate((hash) => (location.hash = hash), view);
        for (const size of [SIZES[2], SIZES[0]]) {
          await page.setViewportSize(size);
          await page.waitForTimeout(400);
          const found = await layoutFaults(page);
          const { violations } = await new AxeBuilder({ page }).analyze();
          const broken = violations.map(
            ({ id, nodes }) => `${id} at ${nodes.map(({ target }) => target.join(' ')).join('; ')}`,
          );
          expect({ view, ...size, found, broken }).toEqual({ view, ...size, found: [], broken: [] });
        }
      }
    },
  );

  it('is chosen in the header, while listening goes on, and stays chosen', async () => {
    const { page } = await open();
    const english = await textsOf('en');
    await page.getByRole('button', { name: english.source.listen, exact: true }).click();
    await page.getByRole('button', { name: english.source.stop, exact: true }).waitFor();
    await page.getByRole('combobox', { name: english.frame.language }).selectOption('fr');
    const french = await textsOf('fr');
    await page.getByRole('button', { name: french.source.stop, exact: true }).waitFor();
    await page.getByRole('combobox', { name: french.frame.language }).waitFor();
    expect(await page.title()).toBe(french.frame.heading);
    await page.reload();
    await page.getByRole('button', { name: french.source.listen, exact: true }).waitFor();
    expect(await page.getByRole('option', { name: LANGUAGES.pl.name }).count()).toBe(1);
  });
});

describe('texts of another length and direction', () => {
  it.each(SIZES)('40 % longer, nothing is cut or covered at $width px', async (viewport) => {
    const { page } = await open({ url: 'about:blank', viewport, serviceWorkers: 'block' });
    await stretchTexts(page);
    await page.goto(inject('pageUrl'));
    await page.getByRole('navigation').waitFor();
    for (const view of VIEWS) {
      await page.evaluate((hash) => (location.hash = hash), view);
      await page.waitForTimeout(400);
      expect({ view, found: await layoutFaults(page) }).toEqual({ view, found: [] });
    }
    expect(await page.getByRole('navigation').innerText()).toContain('Méášüréni');
  });

  it.each(SIZES)(
    'from right to left, nothing is cut or covered at $width px, and the rule keeps its direction',
    async (viewport) => {
      const { page } = await open({ viewport });
      await page.evaluate(() => (document.documentElement.dir = 'rtl'));
      for (const view of VIEWS) {
        await page.evaluate((hash) => (location.hash = hash), view);
        await page.waitForTimeout(400);
        expect({ view, found: await layoutFaults(page) }).toEqual({ view, found: [] });
      }
      await page.evaluate(() => (location.hash = 'measure'));
      const handle = page.getByRole('slider').first();
      const leftOf = async (): Promise<number> => (await handle.boundingBox())?.x ?? NaN;
      await handle.focus();
      const before = await leftOf();
      for (let step = 0; step < 40; step += 1) await page.keyboard.press('ArrowRight');
      await expect.poll(leftOf).toBeGreaterThan(before + 5);
    },
  );
});
