import { readFileSync } from 'node:fs';
import { expect } from 'vitest';
import type { SlideRecording } from '../support/slideRecording.ts';
import type { SiteServer } from '../browser/support/siteServer.ts';
import { solveCsv } from '../browser/support/benchPage.ts';
import type { Person } from './person.ts';
import { goBackToResonance } from './wayBack.ts';

/** How far the results may be from the truth. */
const TOLERANCES = {
  /** Speed from one length of the practice column against its truth: twice the interval that the README states. */
  practicePart: 0.032,
  /** Speed from a recording's two lengths against the truth: the goal that the bench sets itself. */
  recordingPart: 0.005,
  /** A flag against the true moment, s: a person reads the rule long after. */
  flagS: 0.5,
  /** Speed on the page (rounded) against that of the command line, m/s: half of the last digit shown. */
  roundingMps: 0.051,
} as const;
/** Reading errors of the typed lengths, m. */
const MISREAD_M = [0.0007, -0.0007] as const;
/** What stands above every view as soon as the open experiment has a result. */
const SPEED_BESIDE_VIEWS = /^[\d.]+ ± [\d.]+ m\/s$/;
/** Until a page that was changed has written it to its store, ms. */
const SAVED_MS = 1500;

export interface MainJob {
  readonly person: Person;
  readonly site: SiteServer;
  readonly recording: { readonly path: string; readonly truth: SlideRecording };
}

/** What a group does in a lesson, the same in every engine; each step leaves the page as the next one needs it. */
export async function doMainJob(job: MainJob): Promise<void> {
  await practise(job);
  await openRecording(job);
  await reloadAndUndo(job);
  await handFilesOutAndIn(job);
  await workOffline(job);
}

async function practise({ person, site }: MainJob): Promise<void> {
  await person.page.goTo(site.url);
  await person.slide('Length of the column', '12');
  await person.click('button', 'Note these readings');
  await person.click('button', 'Listen');
  await person.waitForWords(/Strike the fork and hold it at the mouth/);
  await person.click('button', 'Strike the fork');
  await person.wait(1500);
  await person.slide('Length of the column', '20');
  await person.waitFor('group', 'Mark 1');
  const readingCm = await goBackToResonance(person, 20);
  await person.click('button', 'Stop');
  await person.fill('Length of mark 1', readingCm.toFixed(2).replace('.', ','), 'Enter');
  const { speedMps } = await person.speed();
  await person.click('button', 'Show the true values');
  const truth = await person.waitForWords(/true speed is [\d.]+ m/);
  const trueMps = Number(/true speed is ([\d.]+) m/.exec(truth)?.[1]);
  expect(Math.abs(speedMps / trueMps - 1)).toBeLessThan(TOLERANCES.practicePart);
}

async function openRecording({ person, recording: { path, truth } }: MainJob): Promise<void> {
  await person.goTo('Records');
  await person.click('button', 'New, same apparatus');
  await person.goTo('Apparatus');
  await person.fill('Inside diameter', '35');
  await person.fill('Air temperature', String(truth.temperatureC));
  await person.goTo('Measure');
  await person.until('an empty list', async () => (await person.lengths()).length === 0);
  await person.click('radio', 'Recording');
  await person.chooseFile('Recording to open', path);
  await person.waitFor('group', `Mark ${truth.passages.length}`);
  for (const [index, passage] of truth.passages.entries()) {
    expect(Math.abs((await person.flagTimeS(index + 1)) - passage.timeS)).toBeLessThan(TOLERANCES.flagS);
    const readM = passage.lengthM + (MISREAD_M[index] ?? 0);
    await person.fill(`Length of mark ${index + 1}`, (readM * 100).toFixed(2).replace('.', ','), 'Enter');
  }
  const { speedMps } = await person.speed();
  expect(Math.abs(speedMps / truth.freeSpeedMps - 1)).toBeLessThan(TOLERANCES.recordingPart);
}

async function reloadAndUndo({ person }: MainJob): Promise<void> {
  const shown = await person.speed();
  const lengths = await person.lengths();
  expect(lengths).toHaveLength(2);
  await person.wait(SAVED_MS);
  await person.page.reload();
  expect(await person.speed()).toEqual(shown);
  expect(await person.lengths()).toEqual(lengths);
  await person.click('button', /^Undo: type length/);
  await person.until('the length to go', async () => (await person.lengths())[1] === '');
  await person.click('button', /^Redo/);
  await person.until('the length to come back', async () => (await person.lengths())[1] === lengths[1]);
  expect(await person.speed()).toEqual(shown);
}

async function handFilesOutAndIn({ person }: MainJob): Promise<void> {
  const shown = await person.speed();
  const lengths = await person.lengths();
  await person.goTo('Records');
  const csv = await person.save('Save marks as CSV');
  const json = await person.save('Save all as JSON');
  expect(Math.abs(solveCsv(csv).speedMps - shown.speedMps)).toBeLessThan(TOLERANCES.roundingMps);
  expect(JSON.parse(readFileSync(json, 'utf8'))).toMatchObject({ marks: [{}, {}] });
  for (const path of [json, csv]) {
    await person.goTo('Records');
    await person.click('button', 'New, same apparatus');
    await person.goTo('Measure');
    await person.until('an empty list', async () => (await person.lengths()).length === 0);
    await person.goTo('Records');
    await person.chooseFile('Experiment file to open', path);
    // An experiment opens by itself; what a table is meant for is asked.
    if (path === csv) await person.click('button', 'Open as a new experiment');
    await person.waitForWords(SPEED_BESIDE_VIEWS);
    await person.goTo('Measure');
    await person.until('the marks again', async () => (await person.lengths()).length === lengths.length);
    expect((await person.lengths()).map(centimetres)).toEqual(lengths.map(centimetres));
    expect((await person.speed()).speedMps).toBeCloseTo(shown.speedMps, 0);
  }
}

async function workOffline({ person, site }: MainJob): Promise<void> {
  const shown = await person.speed();
  await person.until('the site to be kept', () =>
    person.page.evaluate<boolean>('navigator.serviceWorker.controller !== null'),
  );
  await person.wait(SAVED_MS);
  await site.close();
  await person.page.reload();
  expect(await person.speed()).toEqual(shown);
  for (const view of ['Apparatus', 'Check', 'Working', 'Compare', 'Records', 'Measure']) {
    await person.goTo(view);
    await person.until(`something in ${view}`, async () => (await person.count('region', /./)) > 0);
  }
  await person.click('radio', 'Practice column');
  await person.click('button', 'Listen');
  await person.click('button', 'Strike the fork');
  await person.until('a level', async () => (await person.count('img', /^Rise above the room: \d/)) > 0);
  await person.click('button', 'Stop');
}

/** A length as it was typed, or as a file states it. */
const centimetres = (text: string): number => Number(text.replace(',', '.'));
