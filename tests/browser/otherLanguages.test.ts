import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { speakEnglish } from '../../src/words/english.ts';
import { speakFirst, speakLater } from '../../src/words/inUse.ts';
import type { Language } from '../../src/words/language.ts';
import { FIRST_TEXTS, LATER_TEXTS } from '../../src/words/loadTexts.ts';
import { keep, solveCsv } from './support/benchPage.ts';
import { eachBench } from './support/eachBench.ts';

/*
 * The whole job as somebody does it whose browser speaks another language. Everything is found by that language's own
 * texts; the numbers must be those of the command line, which knows no language.
 */

const { open } = eachBench(true);

afterEach(() => speakEnglish());

/** Lengths of a closed tube of 35 mm with a 512 Hz fork at 20,4 °C, as somebody types them. */
const LENGTHS = ['15,81', '49,35', '82,9'] as const;

/** The texts of a language, with functions that say numbers in it. */
async function textsOf(tag: Language) {
  const first = await FIRST_TEXTS[tag]();
  const later = await LATER_TEXTS[tag]();
  speakFirst(tag, first);
  speakLater(later);
  return { ...first, ...later };
}

type Texts = Awaited<ReturnType<typeof textsOf>>;

async function goTo(page: Page, said: Texts, view: keyof Texts['frame']['viewNames']): Promise<void> {
  const link = page.getByRole('link', { name: said.frame.viewNames[view], exact: true });
  await link.click();
  await link.and(page.locator('[aria-current=page]')).waitFor();
}

/** The speed and its uncertainty as the head of the page has them, in the language's own form. */
async function shownSpeed(page: Page, said: Texts): Promise<{ speed: string; uncertainty: string }> {
  const region = page.getByRole('region', { name: said.result.region, exact: true });
  await region.getByText(/± \d/).first().waitFor();
  const found = /(\d[\d.,]*)\s*± (\d[\d.,]*) m\/s/.exec(await region.innerText());
  return { speed: found?.[1] ?? '', uncertainty: found?.[2] ?? '' };
}

async function download(page: Page, button: string): Promise<string> {
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: button, exact: true }).click();
  return keep(await waiting);
}

/** From an empty page to a result: apparatus and three lengths. */
async function measure(page: Page, said: Texts): Promise<void> {
  await goTo(page, said, 'apparatus');
  for (const [label, text] of [
    [said.tube.diameter, '35'],
    [said.places.temperature, '20,4'],
  ] as const) {
    const field = page.getByRole('textbox', { name: label, exact: true });
    await field.fill(text);
    await field.press('Tab');
    // It was read, and stands there in the language's own form.
    await expect.poll(() => field.inputValue()).toBe(text);
  }
  await goTo(page, said, 'measure');
  for (const text of LENGTHS) {
    const field = page.getByRole('textbox', { name: said.marks.newLength, exact: true });
    await field.fill(text);
    await field.press('Enter');
  }
}

describe.each([
  ['de', 'de-AT'],
  ['pl', 'pl-PL'],
] as const)('the whole job in %s', (tag, locale) => {
  it('typed with commas gives the command line’s result, a report, and a file that a Spanish page reads', async () => {
    const said = await textsOf(tag);
    const { page } = await open({ locale });
    expect(await page.locator('html').getAttribute('lang')).toBe(tag);
    expect(await page.title()).toBe(said.frame.heading);
    await measure(page, said);
    const shown = await shownSpeed(page, said);
    expect(shown.speed).toMatch(/^\d{3},\d+$/);

    await goTo(page, said, 'records');
    const csv = await download(page, said.tableKinds.marks.save);
    const solved = solveCsv(csv);
    expect(Number(shown.speed.replace(',', '.'))).toBeCloseTo(solved.speedMps, 1);
    expect(Number(shown.uncertainty.replace(',', '.'))).toBeCloseTo(solved.expandedUncertaintyMps, 1);
    // The file is the same in every language: column names and points.
    expect(readFileSync(csv, 'utf8')).toMatch(/^\ufeff?fork_hz,ends,length_cm[^]*\n512,closed,15\.81,/);
    const json = await download(page, said.files.save);

    await page.evaluate(() => (location.hash = 'report'));
    const report = page.getByRole('region', { name: said.reportPage.name, exact: true });
    await report.getByText(`c = (${shown.speed} ± ${shown.uncertainty}) m/s`).waitFor();
    expect((await page.pdf({ format: 'A4' })).length).toBeGreaterThan(20_000);
    const html = readFileSync(await download(page, said.reportPage.save), 'utf8');
    expect(html).toContain(`<html lang="${tag}"`);
    expect(html).toContain(said.report.discussion);
    expect(html).not.toContain(' of the ');

    const spanish = await textsOf('es');
    const other = await page.context().newPage();
    await other.goto(page.url().replace(/#.*/, ''));
    await other.getByRole('navigation').waitFor();
    await other.getByRole('combobox', { name: said.frame.language, exact: true }).selectOption('es');
    await goTo(other, spanish, 'records');
    await other.locator('input[type=file]').first().setInputFiles(json);
    await other.getByRole('link', { name: spanish.frame.viewNames.measure, exact: true }).click();
    expect(await shownSpeed(other, spanish)).toEqual(shown);
    expect(await other.getByRole('group', { name: spanish.markRow.mark(3), exact: true }).count()).toBe(1);
  });
});

describe('the language', () => {
  it('is changed by hand in the middle of the work, and stays after a reload', async () => {
    const german = await textsOf('de');
    const { page } = await open({ locale: 'en-US' });
    await page.getByRole('combobox', { name: 'Language', exact: true }).selectOption('de');
    await measure(page, german);
    const shown = await shownSpeed(page, german);
    await page.reload();
    expect(await shownSpeed(page, german)).toEqual(shown);
    expect(await page.locator('html').getAttribute('lang')).toBe('de');
    await page.getByRole('combobox', { name: german.frame.language, exact: true }).selectOption('fr');
    const french = await textsOf('fr');
    await goTo(page, french, 'working');
    expect((await shownSpeed(page, french)).speed).toBe(shown.speed);
  });
});
