import type { Page } from 'playwright-core';
import { afterEach, describe, expect, inject, it } from 'vitest';
import { readFileSync } from 'node:fs';
import type { Lesson } from '../../src/notebook/experiment.ts';
import { lessonHash, planOf } from '../../src/notebook/lessonLink.ts';
import { newExperiment } from '../../src/notebook/newExperiment.ts';
import { revealDigest } from '../../src/notebook/revealCode.ts';
import { BenchPage } from './support/benchPage.ts';
import { openPage } from './support/openPage.ts';
import type { OpenedPage } from './support/openPage.ts';

const VIEWS = ['measure', 'apparatus', 'check', 'working', 'compare', 'records', 'report', 'class'] as const;
/** Where theory's speed stands when nothing hides it: the search below is worth nothing unless it finds it there. */
const TELLING_VIEWS = ['measure', 'working', 'compare', 'report', 'class'] as const;

let opened: OpenedPage | null = null;

afterEach(async () => {
  expect(opened?.faults ?? []).toEqual([]);
  await opened?.close();
  opened = null;
});

/** The bench as a lesson's link opens it. */
async function openLesson(lesson: Lesson): Promise<{ page: Page; bench: BenchPage }> {
  const base = newExperiment('', '');
  const plan = planOf({ ...base, tube: { ...base.tube, diameterM: 0.035 } }, lesson);
  opened = await openPage({
    chromiumPath: inject('chromiumPath'),
    url: inject('pageUrl') + (await lessonHash(plan)),
  });
  return { page: opened.page, bench: new BenchPage(opened.page) };
}

/** Everything on the page, view by view, under a lesson of which theory's speed is hidden or shown. */
async function everyView(hideTheory: boolean): Promise<Map<string, string>> {
  const lesson = { task: 'Find three resonances.', hideExpected: true, hideTheory, hideTruth: true };
  const { page, bench } = await openLesson(lesson);
  await page.getByText('Find three resonances.').waitFor();
  await bench.goTo('Apparatus');
  await bench.fill('Air temperature', '21');
  await bench.goTo('Measure');
  // Half waves of 34.6 cm, 354 m/s: far enough from theory for warnings to speak of it.
  for (const length of ['16.2', '50.8', '85.4']) {
    const field = page.getByRole('textbox', { name: 'Length of a new mark' });
    await field.fill(length);
    await field.press('Enter');
  }
  await bench.speed();
  await page.evaluate(() => (location.hash = '#class'));
  await page
    .getByRole('textbox', { name: 'Paste or type a table' })
    .fill(
      [
        'group,speed_mps,standard_uncertainty_mps,temperature_c',
        'Group 1,353.2,0.8,21',
        'Group 2,354.1,1.1,21',
        'Group 3,352.9,0.9,21',
      ].join('\n'),
    );
  await page.getByRole('button', { name: 'Read the table' }).click();
  await page.getByRole('region', { name: 'Table of groups' }).getByText('Group 3').waitFor();
  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save class as JSON' }).click();
  const { theoryMps } = JSON.parse(readFileSync(await (await saved).path(), 'utf8')) as {
    theoryMps: unknown;
  };
  expect(typeof theoryMps).toBe(hideTheory ? 'object' : 'number');
  const found = new Map<string, string>();
  for (const view of VIEWS) {
    await page.evaluate((id) => (location.hash = `#${id}`), view);
    await page.waitForTimeout(500);
    found.set(view, await everythingOn(page));
  }
  await opened?.close();
  return found;
}

/** Texts, what is said for screen readers, what stands in fields, and the words inside of pictures. */
function everythingOn(page: Page): Promise<string> {
  return page.evaluate(() => {
    const parts: string[] = [];
    const look = (node: Node): void => {
      if (node instanceof Text) parts.push(node.data);
      if (node instanceof HTMLInputElement || node instanceof HTMLTextAreaElement) parts.push(node.value);
      if (node instanceof Element) {
        if (node.localName === 'style') return;
        for (const name of ['aria-label', 'aria-valuetext', 'alt', 'title']) {
          parts.push(node.getAttribute(name) ?? '');
        }
        if (node instanceof HTMLImageElement) parts.push(decodeURIComponent(node.src));
        if (node.shadowRoot !== null) look(node.shadowRoot);
      }
      node.childNodes.forEach(look);
    };
    look(document.body);
    return parts.join(' ').replaceAll(/\s+/g, ' ');
  });
}

describe('a lesson that hides theory', () => {
  it('shows theory’s speed on no view, and the same lesson without hiding shows it', async () => {
    const shown = await everyView(false);
    const theory = /Predicted speed (3\d\d)\.\d+ ± [\d.]+ m\/s/.exec(shown.get('measure') ?? '')?.[1];
    if (theory === undefined) throw new Error('The page shows no theory.');
    // 21 °C: 344 m/s and some tenths, by Cramer 1993; no mark, group or tick of an axis says 344.
    const speed = new RegExp(
      String.raw`\b${theory}(\.\d+)?( ±| m/s)|the predicted speed, more|Theory predicts|has the predicted speed|the uncertainties explain`,
    );
    for (const view of TELLING_VIEWS) expect(shown.get(view), view).toMatch(speed);

    const hidden = await everyView(true);
    for (const view of VIEWS) expect(speed.exec(hidden.get(view) ?? '')?.[0] ?? null, view).toBeNull();
    // What the students measured is still there.
    expect(hidden.get('measure')).toMatch(/35\d\.\d ± /);
    expect(hidden.get('compare')).toContain('This lesson hides the predicted speed.');
  });

  it('draws no place of a resonance while the column sounds, and the same lesson without hiding does', async () => {
    const drawn = async (hidden: Partial<Lesson>): Promise<readonly string[]> => {
      const open = {
        task: 'Find three resonances.',
        hideExpected: false,
        hideTheory: false,
        hideTruth: false,
      };
      const { page, bench } = await openLesson({ ...open, ...hidden });
      await page.getByText('Find three resonances.').waitFor();
      await bench.listen();
      // The first resonance of the practice column, where a cheat would put it by his book.
      await page.getByRole('slider', { name: 'Length of the column' }).fill('15.7');
      await page.getByRole('button', { name: 'Strike' }).click();
      const kinds = ['expected', 'wave', 'node'] as const;
      const seen = new Set<string>();
      for (let tries = 0; tries < 30; tries += 1) {
        await page.waitForTimeout(100);
        for (const kind of kinds)
          if ((await page.locator(`bench-column .${kind}`).count()) > 0) seen.add(kind);
      }
      await opened?.close();
      return kinds.filter((kind) => seen.has(kind));
    };
    expect(await drawn({})).toEqual(['expected', 'wave', 'node']);
    expect(await drawn({ hideTheory: true })).toEqual([]);
    expect(await drawn({ hideExpected: true })).toEqual([]);
  });

  it('hides it in what a student begins or brings in, until the teacher’s code shows it', async () => {
    const lesson = {
      task: 'Find three resonances.',
      hideExpected: false,
      hideTheory: true,
      hideTruth: true,
      reveal: revealDigest('K7QM3F'),
    };
    const { page, bench } = await openLesson(lesson);
    await page.getByText('Find three resonances.').waitFor();
    const result = page.getByRole('region', { name: 'Details of the result' });
    const saysTheory = async (): Promise<boolean> => {
      await bench.goTo('Apparatus');
      await bench.fill('Air temperature', '21');
      await bench.goTo('Measure');
      await bench.speed();
      return /Predicted speed/.test((await result.textContent()) ?? '');
    };
    await bench.goTo('Records');
    await page.getByRole('button', { name: 'New from scratch' }).click();
    await bench.goTo('Measure');
    await bench.addMarks(['16.2', '50.8']);
    expect(await saysTheory()).toBe(false);
    await bench.goTo('Records');
    await page
      .getByRole('textbox', { name: 'Paste or type a table' })
      .fill('fork_hz,ends,length_cm\n512,closed,15.8\n512,closed,49.3');
    await page.getByRole('button', { name: 'Read the table' }).click();
    await page.getByRole('button', { name: 'Open as a new experiment' }).click();
    expect(await saysTheory()).toBe(false);
    // As a link that the teacher projects; a wrong one shows nothing.
    await page.evaluate(() => (location.hash = '#reveal=K7QM3G'));
    await page.getByText(/This code opens no lesson on this device/).waitFor();
    expect(await saysTheory()).toBe(false);
    await page.evaluate(() => (location.hash = '#reveal=K7QM3F'));
    await page.getByText(/3 experiments of this lesson show everything now/).waitFor();
    expect(await saysTheory()).toBe(true);
  });
});
