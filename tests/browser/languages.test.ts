import { AxeBuilder } from '@axe-core/playwright';
import { describe, expect, inject, it } from 'vitest';
import { FIRST_TEXTS, LATER_TEXTS } from '../../src/words/loadTexts.ts';
import { LANGUAGE_TAGS } from '../../src/words/language.ts';
import type { Language } from '../../src/words/language.ts';
import { eachBench } from './support/eachBench.ts';
import { layoutFaults } from './support/layoutFaults.ts';
import { stretchTexts } from './support/stretchedTexts.ts';

const { open } = eachBench(true);

const SIZES = [
  { width: 1280, height: 800 },
  { width: 820, height: 1180 },
  { width: 390, height: 844 },
] as const;
const VIEWS = ['measure', 'apparatus', 'check', 'working', 'compare', 'records', 'report', 'class'] as const;

const textsOf = async (tag: Language) => ({
  ...(await FIRST_TEXTS[tag]()),
  ...(await LATER_TEXTS[tag]()),
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
          expect({ view, ...size, found }).toEqual({ view, ...size, found: [] });
        }
        const { violations } = await new AxeBuilder({ page }).analyze();
        const broken = violations.map(
          ({ id, nodes }) => `${id} at ${nodes.map(({ target }) => target.join(' ')).join('; ')}`,
        );
        expect({ view, broken }).toEqual({ view, broken: [] });
      }
    },
  );
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
    expect(await page.getByRole('navigation').innerText()).toContain('Méášüréeni');
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
      const tickAt = async (cm: string): Promise<number> =>
        (await page.locator('bench-column').getByText(cm, { exact: true }).boundingBox())?.x ?? NaN;
      expect(await tickAt('60')).toBeGreaterThan((await tickAt('20')) + 50);
    },
  );
});
