import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import type { EnginePage } from './engine.ts';

/** How long a person waits for what must come, ms: software that draws on a busy machine takes its time. */
const PATIENCE_MS = 30_000;
const LOOK_EVERY_MS = 100;

/** The bench as a person uses it in any engine: everything is found by role and name. */
export class Person {
  /** @param folder  where the browser saves what the page hands out */
  constructor(
    readonly page: EnginePage,
    private readonly folder: string,
  ) {}

  /** Until the view is there: most come when they are first opened. */
  async goTo(view: string): Promise<void> {
    await this.click('link', view);
    await this.until(`the view ${view}`, () =>
      this.ask<boolean>(`benchHand.find('link', ${pattern(view)})?.getAttribute('aria-current') === 'page'`),
    );
  }

  async click(role: string, name: string | RegExp): Promise<void> {
    const place = await this.until(`${role} ${String(name)} to press`, () =>
      this.ask<{ x: number; y: number } | null>(`benchHand.place(${JSON.stringify(role)}, ${pattern(name)})`),
    );
    await this.page.clickAt(place.x, place.y);
  }

  async waitFor(role: string, name: string | RegExp, patienceMs = PATIENCE_MS): Promise<void> {
    await this.until(`${role} ${String(name)}`, async () => (await this.count(role, name)) > 0, patienceMs);
  }

  /** Words of the innermost thing that says so. */
  waitForWords(words: RegExp): Promise<string> {
    return this.until(`words like ${String(words)}`, () => this.said(words));
  }

  said(words: RegExp): Promise<string | null> {
    return this.ask<string | null>(`benchHand.said(${String(words)})`);
  }

  count(role: string, name: string | RegExp): Promise<number> {
    return this.ask<number>(`benchHand.count(${JSON.stringify(role)}, ${pattern(name)})`);
  }

  /** Types over what stands in a field, and leaves it by a key. */
  async fill(name: string, text: string, leaveBy: 'Enter' | 'Tab' = 'Tab'): Promise<void> {
    await this.waitFor('textbox', name);
    await this.ask(`benchHand.select('textbox', ${pattern(name)})`);
    await this.page.type(text);
    await this.page.press(leaveBy);
  }

  async slide(name: string, value: string): Promise<void> {
    await this.until(`slider ${name}`, () =>
      this.ask<boolean>(`benchHand.slide(${pattern(name)}, ${JSON.stringify(value)})`),
    );
  }

  async chooseFile(name: string, path: string): Promise<void> {
    await this.waitFor('file', name);
    await this.page.chooseFile(`benchHand.find('file', ${pattern(name)})`, path);
  }

  /** Presses a button that saves a file. @returns the file's path */
  async save(button: string): Promise<string> {
    const before = new Set(this.files());
    await this.click('button', button);
    let last: { path: string; bytes: number } | null = null;
    return this.until(`a file from ${button}`, () => {
      const [name] = this.files().filter((file) => !before.has(file));
      if (name === undefined) return Promise.resolve(null);
      const path = join(this.folder, name);
      const bytes = statSync(path).size;
      const isWhole = bytes > 0 && last?.path === path && last.bytes === bytes;
      last = { path, bytes };
      return Promise.resolve(isWhole ? path : null);
    });
  }

  /** What stands in the marks' length fields, by the marks' numbers; the list itself shows the newest first. */
  async lengths(): Promise<string[]> {
    const fields = await this.ask<{ name: string; value: string }[]>(
      `benchHand.values('textbox', /^Length of mark \\d+$/)`,
    );
    const number = ({ name }: { name: string }): number => Number(name.split(' ').at(-1));
    return fields.sort((one, other) => number(one) - number(other)).map(({ value }) => value);
  }

  /** Source time at which a mark's level peaked, as the page says it, s. */
  async flagTimeS(mark: number): Promise<number> {
    const words = await this.wordsOf('group', `Mark ${mark}`);
    const found = /at ([\d.]+) s/.exec(words);
    if (found === null) throw new Error(`Mark ${mark} shows no time: ${words}`);
    return Number(found[1]);
  }

  /** The speed and its uncertainty as shown, m/s. */
  speed(): Promise<{ speedMps: number; uncertaintyMps: number }> {
    return this.until('a speed', async () => {
      if ((await this.count('region', 'Speed of sound')) === 0) return null;
      const found = /([\d.]+)\s*± ([\d.]+) m\/s/.exec(await this.wordsOf('region', 'Speed of sound'));
      return found === null ? null : { speedMps: Number(found[1]), uncertaintyMps: Number(found[2]) };
    });
  }

  /** Looks again and again. @throws Error that names what never came, with what the page showed */
  async until<T>(what: string, look: () => Promise<T | null | false>, patienceMs = PATIENCE_MS): Promise<T> {
    const endMs = performance.now() + patienceMs;
    for (;;) {
      const found = await look();
      if (found !== null && found !== false) return found;
      if (performance.now() > endMs) {
        const shown = await this.ask<string>('benchHand.wordsIn(document.body)');
        throw new Error(`${this.page.engine}: ${what} never came. The page shows: ${shown}`);
      }
      await pause(LOOK_EVERY_MS);
    }
  }

  wait(ms: number): Promise<void> {
    return pause(ms);
  }

  private wordsOf(role: string, name: string): Promise<string> {
    return this.ask<string>(`benchHand.wordsIn(benchHand.find(${JSON.stringify(role)}, ${pattern(name)}))`);
  }

  private ask<T>(expression: string): Promise<T> {
    return this.page.evaluate<T>(expression);
  }

  /** Whole ones: browsers give what they still write an ending of their own. */
  private files(): string[] {
    return readdirSync(this.folder).filter((name) => /\.(csv|json|html)$/.test(name));
  }
}

/** As the page's language writes it; a plain name is meant as a whole. */
function pattern(name: string | RegExp): string {
  if (name instanceof RegExp) return String(name);
  return String(new RegExp(`^${name.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&')}$`));
}
