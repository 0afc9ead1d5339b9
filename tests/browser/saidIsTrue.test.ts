import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import type {} from '../../src/ui/appElement.ts';
import { lessonHash, planOf } from '../../src/notebook/lessonLink.ts';
import { newExperiment } from '../../src/notebook/newExperiment.ts';
import { experimentJson } from '../../src/report/experimentJson.ts';
import { exampleExperiment, exampleMark } from '../unit/notebook/exampleExperiment.ts';
import { BenchPage } from './support/benchPage.ts';
import { eachBench } from './support/eachBench.ts';
import { SHARED_DATABASE, recordInStore, storeOfFirstVersion } from './support/storedRecords.ts';

const { open, current } = eachBench();

const stateOf = (page: Page): Promise<string | undefined> =>
  page.evaluate(() => document.querySelector('bench-app')?.session.saveState.kind);

async function saved(page: Page): Promise<void> {
  await expect.poll(() => stateOf(page)).toBe('saved');
}

/** The address leads elsewhere, as with the browser's own buttons: no field is left by a click. */
async function goByAddress(page: Page, hash: string): Promise<void> {
  await page.evaluate((to) => (location.hash = to), hash);
}

async function fillUp(page: Page): Promise<void> {
  const control = await page.context().newCDPSession(page);
  const { origin } = new URL(inject('pageUrl'));
  await control.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
}

/** Of the copy of the site that the tests use. */
const ownDatabase = (): string => `${SHARED_DATABASE} ${new URL(inject('pageUrl')).pathname}`;

describe('“Saved”', () => {
  it('is never said of marks whose store another tab erases in the middle, eight times', async () => {
    const bench = await open();
    const { page } = bench;
    const other = await page.context().newPage();
    await other.goto(`${inject('pageUrl')}icon.svg`);
    for (let round = 0; round < 8; round += 1) {
      await page.getByRole('button', { name: 'Add mark', exact: true }).waitFor();
      // Marks come as fast as the store takes them, and the erasing falls into a different moment each time.
      const marking = page.evaluate(
        async (count) => {
          const session = document.querySelector('bench-app')?.session;
          if (session === undefined) throw new Error('no session');
          await session.experiments.openNew(false);
          for (let index = 0; index < count; index += 1) {
            session.addMarkByHand(null);
            await new Promise((resolve) => setTimeout(resolve));
          }
          await session.keeping.idle();
          return session.experiment.id;
        },
        5 + 4 * round,
      );
      await other.evaluate(
        (name) =>
          new Promise<void>((resolve, reject) => {
            const erasing = indexedDB.deleteDatabase(name);
            erasing.onsuccess = () => resolve();
            erasing.onerror = () => reject(new Error('not erased'));
          }),
        ownDatabase(),
      );
      const id = await marking;
      const marks = await page.evaluate(
        () => document.querySelector('bench-app')?.session.experiment.marks.length,
      );
      if ((await stateOf(page)) !== 'saved') {
        await page.getByRole('button', { name: 'Try again' }).click();
        await saved(page);
      }
      const record = (await recordInStore(other, ownDatabase(), id)) as { marks?: unknown[] } | undefined;
      expect(record?.marks?.length, `round ${round}`).toBe(marks);
      await page.reload();
      await expect
        .poll(() => page.evaluate(() => document.querySelector('bench-app')?.session.experiment.marks.length))
        .toBe(marks);
    }
  });
});

describe('a choice shows what is in use', () => {
  it('after undo: fork, column, place and order', async () => {
    const bench = await open();
    const { page } = bench;
    await bench.goTo('Apparatus');
    await page.getByRole('combobox', { name: 'Add a fork' }).selectOption('256 Hz');
    // It adds, and is ready for the next.
    expect(await page.getByRole('combobox', { name: 'Add a fork' }).inputValue()).toBe('');
    await page.getByRole('button', { name: 'Add a place' }).click();
    await bench.goTo('Measure');
    await bench.addMarks(['15.8']);
    await bench.chooseMark(1);
    for (const [name, before, after] of [
      ['Fork', '256 Hz', '512 Hz'],
      ['Column', 'closed at one end', 'open at both ends'],
      ['Place', 'Place 2', 'Lab'],
      ['Order of mark 1', 'order: auto', '3rd'],
    ] as const) {
      const select = page.getByRole('combobox', { name, exact: true });
      const shown = (): Promise<string | undefined> =>
        select.evaluate((one) => (one as HTMLSelectElement).selectedOptions[0]?.textContent.trim());
      expect(await shown()).toBe(before);
      await select.selectOption(after);
      await page.getByRole('button', { name: /^Undo/ }).click();
      await expect.poll(shown, { message: name }).toBe(before);
      await page.getByRole('button', { name: 'Redo' }).click();
      await expect.poll(shown, { message: name }).toBe(after);
      await page.getByRole('button', { name: /^Undo/ }).click();
      await expect.poll(shown, { message: name }).toBe(before);
    }
    await page.getByRole('combobox', { name: 'Fork', exact: true }).selectOption('512 Hz');
    await page.getByRole('button', { name: /^Undo/ }).click();
    await bench.addMarks(['33']);
    // The mark belongs to the fork that is shown.
    await page.getByRole('group', { name: 'Mark 2' }).getByText('256 Hz').waitFor();
  });

  it('also where it isn’t part of the experiment, and where another tab has it', async () => {
    const bench = await open();
    const { page } = bench;
    for (const [name, option] of [
      ['Wave drawn', 'displacement'],
      ['Room', 'some talk'],
      ['Theme', 'dark'],
    ] as const) {
      const select = page.getByRole('combobox', { name, exact: true });
      await select.selectOption(option);
      await bench.addMarks(['15.8']);
      expect(
        await select.evaluate((one) => (one as HTMLSelectElement).selectedOptions[0]?.textContent.trim()),
      ).toBe(option);
    }
    await bench.goTo('Compare');
    const by = page.getByRole('combobox', { name: 'Compare' });
    await by.selectOption('forks');
    await page.getByText(/Add a fork under Apparatus/).waitFor();
    expect(await by.inputValue()).toBe('fork');
    await saved(page);
    const second = new BenchPage(await page.context().newPage());
    await second.page.goto(inject('pageUrl'));
    await second.page.getByText('open in another tab').first().waitFor();
    const column = second.page.getByRole('combobox', { name: 'Column' });
    await column.selectOption('open at both ends');
    await expect.poll(() => column.inputValue()).toBe('closed');
  });

  it('an order however high', async () => {
    const bench = await open({ url: `${inject('pageUrl')}icon.svg` });
    const { page } = bench;
    const mark = { ...exampleMark('a', { lengthM: 0.8 }), order: 17 };
    await storeOfFirstVersion(page, [exampleExperiment([mark])]);
    await page.goto(inject('pageUrl'));
    await bench.chooseMark(1);
    const order = page.getByRole('combobox', { name: 'Order of mark 1' });
    await expect.poll(() => order.inputValue()).toBe('17');
    await order.selectOption('19');
    await expect.poll(() => order.inputValue()).toBe('19');
  });
});

describe('what is opened and typed', () => {
  it('another experiment that is opened is the one that a reload opens', async () => {
    const bench = await open();
    const { page } = bench;
    await bench.addMarks(['10']);
    await bench.goTo('Records');
    const list = page.getByRole('region', { name: 'Experiments', exact: true });
    await list.getByRole('button', { name: 'New from scratch' }).click();
    await list.getByRole('button', { name: 'Open Experiment', exact: true }).click();
    await list.locator('li.open').filter({ hasText: '1 mark' }).waitFor();
    await page.reload();
    await bench.goTo('Measure');
    await expect.poll(() => bench.lengths()).toEqual(['10']);
  });

  it('a note, half a length, a lesson and a table outlive a reload and a change of view', async () => {
    const bench = await open();
    const { page } = bench;
    await bench.addMarks(['10']);
    await saved(page);
    const length = page.getByRole('textbox', { name: 'Length of a new mark' });
    await length.click();
    await page.keyboard.type('15.');
    await page.reload();
    await expect.poll(() => length.inputValue()).toBe('15.');
    await page.getByText('it isn’t used yet. Press Enter').waitFor();
    await expect.poll(() => bench.lengths()).toEqual(['10']);
    await length.click();
    await page.keyboard.press('End');
    await page.keyboard.type('8');
    await goByAddress(page, '#records');
    const note = page.getByRole('textbox', { name: 'Note', exact: true });
    await note.click();
    await page.keyboard.type('Water at 21');
    // Away in the middle of the note, by the browser's own button.
    await page.goBack();
    await expect.poll(() => length.inputValue()).toBe('15.8');
    await length.press('Enter');
    await expect.poll(() => bench.lengths()).toEqual(['10', '15.8']);
    await page.goForward();
    await expect.poll(() => note.inputValue()).toBe('Water at 21');
    await note.click();
    await page.keyboard.press('Control+End');
    await page.keyboard.type(' degrees');
    await page.reload();
    await expect.poll(() => note.inputValue()).toBe('Water at 21 degrees');
    const task = page.getByRole('textbox', { name: 'What to measure' });
    const hide = page.getByRole('checkbox', { name: 'Hide the predicted speed' });
    const table = page.getByRole('textbox', { name: 'Paste or type a table' });
    await task.click();
    await page.keyboard.type('The speed of sound, both ends open');
    await hide.check();
    await table.click();
    await page.keyboard.type('15,8');
    await page.reload();
    await expect.poll(() => task.inputValue()).toBe('The speed of sound, both ends open');
    await expect.poll(() => hide.isChecked()).toBe(true);
    await expect.poll(() => table.inputValue()).toBe('15,8');
    await bench.goTo('Apparatus');
    const diameter = page.getByRole('textbox', { name: 'Inside diameter' });
    await diameter.click();
    await page.keyboard.type('3');
    await page.reload();
    await expect.poll(() => diameter.inputValue()).toBe('3');
    const inUse = (): Promise<number | null | undefined> =>
      page.evaluate(() => document.querySelector('bench-app')?.session.experiment.tube.diameterM);
    expect(await inUse()).toBeNull();
    await diameter.press('Enter');
    await expect.poll(inUse).toBe(0.003);
  });

  it('a note is in the store soon after the last key, without leaving the field', async () => {
    const bench = await open();
    const { page } = bench;
    await bench.goTo('Records');
    const note = page.getByRole('textbox', { name: 'Note', exact: true });
    await note.click();
    await page.keyboard.type('Water was warm');
    const id = await page.evaluate(() => document.querySelector('bench-app')?.session.experiment.id ?? '');
    await expect.poll(() => recordInStore(page, ownDatabase(), id)).toMatchObject({ note: 'Water was warm' });
    await page.getByRole('heading', { name: 'This experiment' }).click();
    await page.keyboard.press('Control+z');
    await expect.poll(() => note.inputValue()).toBe('');
  });
});

describe('work that storage refuses', () => {
  it('gives way only after a question, with the file on offer', async () => {
    const bench = await open();
    const { page } = bench;
    await fillUp(page);
    await bench.addMarks(['10']);
    await page.getByRole('alert').filter({ hasText: 'is full' }).waitFor();
    await bench.goTo('Records');
    const question = page.getByRole('dialog', { name: 'Leave “Experiment” without saving it?' });
    const fresh = page.getByRole('button', { name: 'New from scratch' });
    const marks = (): Promise<number | undefined> =>
      page.evaluate(() => document.querySelector('bench-app')?.session.experiment.marks.length);
    await fresh.click();
    await question.getByRole('button', { name: 'Stay with it' }).click();
    expect(await marks()).toBe(1);
    // A lesson link in the same tab asks as well; going elsewhere is a no.
    const lesson = { task: '', hideExpected: false, hideTheory: false, hideTruth: false };
    const plan = planOf(newExperiment('', ''), lesson);
    await goByAddress(page, await lessonHash(plan));
    await question.waitFor();
    await goByAddress(page, '#records');
    await question.waitFor({ state: 'hidden' });
    expect(await marks()).toBe(1);
    await fresh.click();
    const waiting = page.waitForEvent('download');
    await question.getByRole('button', { name: 'Save the file, then go on' }).click();
    expect((await waiting).suggestedFilename()).toMatch(/\.json$/);
    await expect.poll(marks).toBe(0);
  });

  it('of several files that are to be opened, the question comes once', async () => {
    const bench = await open();
    const { page } = bench;
    await fillUp(page);
    await bench.addMarks(['10']);
    await page.getByRole('alert').filter({ hasText: 'is full' }).waitFor();
    await bench.goTo('Records');
    const files = ['one', 'two'].map((id) => ({
      name: `${id}.json`,
      mimeType: 'application/json',
      buffer: Buffer.from(
        experimentJson({ ...exampleExperiment([exampleMark('a', { lengthM: 0.16 })]), id }),
      ),
    }));
    await page.locator('input[type=file][multiple]').first().setInputFiles(files);
    await page.getByRole('button', { name: 'Open each as an experiment' }).click();
    await page.getByRole('button', { name: 'Stay with it' }).click();
    await page.getByText('2 files were not opened.').waitFor();
    await expect.poll(() => page.getByRole('button', { name: 'Stay with it' }).isVisible()).toBe(false);
    expect(
      await page.evaluate(() => document.querySelector('bench-app')?.session.experiment.marks.length),
    ).toBe(1);
  });

  it('has the browser ask before the tab goes, and only then', async () => {
    const bench = await open();
    const { page } = bench;
    const asks = (): Promise<boolean> =>
      page.evaluate(() => !dispatchEvent(new Event('beforeunload', { cancelable: true })));
    await bench.addMarks(['10']);
    await saved(page);
    expect(await asks()).toBe(false);
    await page.evaluate(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('no room', 'QuotaExceededError');
      };
    });
    await bench.addMarks(['20']);
    await expect.poll(() => stateOf(page)).toBe('refused');
    expect(await asks()).toBe(true);
  });
});

describe('from any view', () => {
  it('the key E and “Type a length” lead to the field', async () => {
    const bench = await open();
    const { page } = bench;
    const focused = (): Promise<string> =>
      page.evaluate(() => {
        let element = document.activeElement;
        while (element?.shadowRoot?.activeElement) element = element.shadowRoot.activeElement;
        return element?.getAttribute('aria-label') ?? '';
      });
    for (const view of ['Apparatus', 'Check', 'Working', 'Compare', 'Records']) {
      await bench.goTo(view);
      await page.keyboard.press('e');
      await expect.poll(focused, { message: view }).toBe('Length of a new mark');
      await page.keyboard.press('Escape');
    }
    await page.keyboard.press('m');
    for (const view of ['Apparatus', 'Records']) {
      await bench.goTo(view);
      await page.keyboard.press('e');
      await expect.poll(focused, { message: view }).toBe('Length of mark 1');
      await bench.goTo(view);
      await page.getByRole('button', { name: 'Type a length' }).click();
      await expect.poll(focused, { message: view }).toBe('Length of mark 1');
    }
    expect(current()?.faults).toEqual([]);
  });

  it('an open question is closed as a no when the address leads elsewhere; links lead out beside the bench', async () => {
    const bench = await open();
    const { page } = bench;
    await bench.addMarks(['10']);
    await saved(page);
    const dialogs = page.getByRole('dialog');
    await bench.goTo('Records');
    await page.getByRole('button', { name: 'Erase everything…' }).click();
    await dialogs.waitFor();
    await page.goBack();
    await expect.poll(() => dialogs.count()).toBe(0);
    await page.keyboard.press('?');
    await dialogs.waitFor();
    await page.goForward();
    await expect.poll(() => dialogs.count()).toBe(0);
    const table = page.getByRole('textbox', { name: 'Paste or type a table' });
    await table.fill('15,8\n49,3');
    await page.getByRole('button', { name: 'Read the table' }).click();
    await page.getByRole('dialog', { name: 'What came in' }).waitFor();
    await page.goBack();
    await expect.poll(() => dialogs.count()).toBe(0);
    await expect.poll(() => bench.lengths()).toEqual(['10']);
    await page.goForward();
    // What was typed is still there, to be read once more.
    await expect.poll(() => table.inputValue()).toBe('15,8\n49,3');
    const beside = page.context().waitForEvent('page');
    await page.getByRole('link', { name: 'JSON Schema' }).click();
    expect((await beside).url()).toContain('schema/experiment.schema.json');
    expect(page.url()).toContain('#records');
  });
});
