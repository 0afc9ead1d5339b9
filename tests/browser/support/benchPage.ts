import { execFileSync } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Download, Locator, Page } from 'playwright-core';
import { commandWords } from '../../support/commandWords.ts';

/** The bench as a person uses it: everything is found by role and name. */
export class BenchPage {
  constructor(readonly page: Page) {}

  /** Until the view is there: most come when they are first opened. */
  async goTo(view: string): Promise<void> {
    const link = this.linkTo(view);
    await link.click();
    await link.and(this.page.locator('[aria-current=page]')).waitFor();
  }

  linkTo(view: string): Locator {
    return this.page.getByRole('navigation', { name: 'Views' }).getByRole('link', { name: view });
  }

  async listen(): Promise<void> {
    await this.page.getByRole('button', { name: 'Listen', exact: true }).click();
  }

  async stop(): Promise<void> {
    await this.page.getByRole('button', { name: 'Stop', exact: true }).click();
  }

  get marks(): Locator {
    return this.page.getByRole('group', { name: /^Mark \d+$/ });
  }

  lengthOf(mark: number): Locator {
    return this.page.getByRole('textbox', { name: `Length of mark ${mark}`, exact: true });
  }

  /** Shows what can be done with a mark. */
  async chooseMark(mark: number): Promise<void> {
    const button = this.page.getByRole('button', { name: `Change mark ${mark}`, exact: true });
    if ((await button.getAttribute('aria-expanded')) === 'false') await button.click();
  }

  async deleteMark(mark: number): Promise<void> {
    await this.chooseMark(mark);
    const group = this.page.getByRole('group', { name: `Mark ${mark}`, exact: true });
    await group.getByRole('button', { name: `Delete mark ${mark}`, exact: true }).click();
  }

  /** Types lengths of new marks, cm, as a person does. */
  async addMarks(lengths: readonly string[]): Promise<void> {
    for (const length of lengths) {
      const field = this.page.getByRole('textbox', { name: 'Length of a new mark' });
      await field.fill(length);
      await field.press('Enter');
    }
  }

  /** Waits until the notebook is open: before that the page shows no marks, though some may be kept. */
  async opened(): Promise<void> {
    await this.page.getByRole('textbox', { name: 'Length of a new mark' }).waitFor();
  }

  /** What stands in the marks' length fields, by the marks' numbers; the list itself shows the newest first. */
  lengths(): Promise<string[]> {
    return this.page.getByRole('textbox', { name: /^Length of mark \d+$/ }).evaluateAll((inputs) =>
      inputs
        .map((input) => input as HTMLInputElement)
        .sort(
          (one, other) =>
            parseInt((one.ariaLabel ?? '').slice(15)) - parseInt((other.ariaLabel ?? '').slice(15)),
        )
        .map((input) => input.value),
    );
  }

  /** Source time at which a mark's level peaked, as the page says it. */
  async flagTimeS(mark: number): Promise<number> {
    const text = await this.page.getByRole('group', { name: `Mark ${mark}`, exact: true }).innerText();
    const found = /at ([\d.]+) s/.exec(text);
    if (found === null) throw new Error(`Mark ${mark} shows no time: ${text}`);
    return Number(found[1]);
  }

  /** The speed and its uncertainty as shown, m/s. */
  async speed(): Promise<{ speedMps: number; uncertaintyMps: number }> {
    const region = this.page.getByRole('region', { name: 'Speed of sound' });
    await region
      .getByText(/± [\d.]+ m\/s/)
      .first()
      .waitFor();
    const found = /([\d.]+)\s*± ([\d.]+) m\/s/.exec(await region.innerText());
    if (found === null) throw new Error('No speed is shown.');
    return { speedMps: Number(found[1]), uncertaintyMps: Number(found[2]) };
  }

  /** What the way back says, and how far it says that is, mm; null where it doesn't. */
  async wayBack(): Promise<{ words: string; mm: number | null }> {
    const words = await this.page
      .getByText(/: push in|: pull out|Hold still and read the rule|loudest place|Can’t tell|Back to the/)
      .first()
      .innerText();
    const toGo = this.page.getByText('mm to go').locator('..');
    const told = (await toGo.count()) === 0 ? null : /[\d.]+/.exec(await toGo.innerText());
    return { words, mm: told === null ? null : Number(told[0]) };
  }

  async enterApparatus(what: { diameterMm: number; temperatureC: number }): Promise<void> {
    await this.goTo('Apparatus');
    await this.fill('Inside diameter', String(what.diameterMm));
    await this.fill('Air temperature', String(what.temperatureC).replace('.', ','));
    await this.goTo('Measure');
  }

  async fill(label: string, text: string): Promise<void> {
    const field = this.page.getByRole('textbox', { name: label, exact: true });
    await field.fill(text);
    await field.press('Tab');
  }

  /** Saves the marks as CSV. @returns the file's path */
  async saveCsv(): Promise<string> {
    await this.goTo('Records');
    const waiting = this.page.waitForEvent('download');
    await this.page.getByRole('button', { name: 'Save marks as CSV' }).click();
    return keep(await waiting);
  }

  /** Saves everything as JSON. @returns the file's path */
  async saveJson(): Promise<string> {
    await this.goTo('Records');
    const waiting = this.page.waitForEvent('download');
    await this.page.getByRole('button', { name: 'Save all as JSON' }).click();
    return keep(await waiting);
  }
}

/** What the command line makes of a CSV file. */
export function solveCsv(path: string): { speedMps: number; expandedUncertaintyMps: number } {
  const output = execFileSync(process.execPath, [...commandWords('solve'), '--json', path], {
    encoding: 'utf8',
  });
  return JSON.parse(output) as { speedMps: number; expandedUncertaintyMps: number };
}

/** A folder of this test run for files that come and go. */
export function scratchFolder(): string {
  return mkdtempSync(join(tmpdir(), 'bench-'));
}

export async function keep(download: Download): Promise<string> {
  const path = join(scratchFolder(), download.suggestedFilename());
  await download.saveAs(path);
  return path;
}
