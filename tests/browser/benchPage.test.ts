import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import { describe, expect, it } from 'vitest';
import { writeWavFile } from '../support/wavFile.ts';
import { scratchFolder } from './support/benchPage.ts';
import { eachBench } from './support/eachBench.ts';

const VIEWS = ['Measure', 'Apparatus', 'Check', 'Working', 'Compare', 'Records'] as const;

const { open } = eachBench();

describe('what goes wrong is said, and nothing is lost', () => {
  it('says what to do when the microphone is refused, and goes on by hand', async () => {
    const bench = await open({ microphone: 'refused' });
    await bench.page.getByRole('radio', { name: 'Microphone' }).check();
    await bench.listen();
    // The eye finds what to do beside the way to start again; the ear must have all of it in one announcement.
    await bench.page
      .getByRole('alert')
      .filter({ hasText: /The microphone was refused\. .*allow the microphone.*use the practice column/ })
      .waitFor();
    await bench.page
      .getByRole('region', { name: 'Listening ended' })
      .filter({ hasText: 'allow the microphone' })
      .waitFor();
    await bench.addMarks(['15,8']);
    expect(await bench.marks.count()).toBe(1);
    await bench.page.getByRole('button', { name: 'Listen', exact: true }).waitFor();
  });

  it('says that there is no microphone', async () => {
    const bench = await open({ microphone: 'absent' });
    await bench.page.getByRole('radio', { name: 'Microphone' }).check();
    await bench.listen();
    await bench.page.getByRole('alert').filter({ hasText: 'No microphone was found' }).waitFor();
  });

  it('says that a file is no audio, and that a silent recording holds nothing', async () => {
    const bench = await open();
    const text = join(scratchFolder(), 'notes.wav');
    writeFileSync(text, 'these are no samples');
    const silent = join(scratchFolder(), 'silent.wav');
    writeWavFile(silent, new Float32Array(48_000 * 5));
    await bench.page.getByRole('radio', { name: 'Recording' }).check();
    const chooser = bench.page.getByLabel('Recording to open');
    await chooser.setInputFiles(text);
    await bench.page
      .getByRole('alert')
      .filter({ hasText: /audio|sound/ })
      .waitFor();
    await chooser.setInputFiles(silent);
    await bench.page
      .getByRole('alert')
      .filter({ hasText: /silent|no sound|No resonance|Nothing/i })
      .waitFor();
    expect(await bench.marks.count()).toBe(0);
  });

  it('keeps what was typed and names the fault of a wrong length', async () => {
    const bench = await open();
    await bench.addMarks(['15.8']);
    for (const [typed, words] of [
      ['abc', 'not a number'],
      ['-3', 'negative'],
      ['0', 'zero'],
      ['0.158', 'metres'],
    ] as const) {
      await bench.lengthOf(1).fill(typed);
      await bench.lengthOf(1).press('Enter');
      await bench.page.getByRole('group', { name: 'Mark 1' }).getByText(words).waitFor();
      expect(await bench.lengthOf(1).inputValue()).toBe(typed);
    }
    await bench.lengthOf(1).fill('15,9');
    await bench.lengthOf(1).press('Enter');
    await expect.poll(() => bench.lengthOf(1).inputValue()).toBe('15,9');
  });

  it('works without storage, and says so', async () => {
    const bench = await open({
      beforeScripts: `Object.defineProperty(window, 'indexedDB', { get() { throw new Error('storage is refused'); } });`,
    });
    await bench.page.getByText('Not saved on this device').waitFor();
    await bench.addMarks(['15.8', '49.2']);
    expect((await bench.speed()).speedMps).toBeGreaterThan(330);
  });
});

describe('marks', () => {
  it('are deleted, undone, brought back, left out and made by key', async () => {
    const bench = await open();
    const { page } = bench;
    await bench.addMarks(['15.8', '49.2', '82.6']);
    await bench.deleteMark(2);
    expect(await bench.marks.count()).toBe(2);
    await page.getByRole('button', { name: /^Undo/ }).click();
    expect(await bench.marks.count()).toBe(3);
    await bench.deleteMark(1);
    await page.getByText('Deleted marks (1)').click();
    await page.getByRole('button', { name: 'Bring back' }).click();
    expect(await bench.marks.count()).toBe(3);
    const before = await bench.speed();
    await bench.chooseMark(3);
    await page.getByRole('button', { name: 'Leave mark 3 out of the fit' }).click();
    await page.getByText('left out', { exact: true }).waitFor();
    expect(await bench.speed()).not.toEqual(before);
    await page.getByRole('heading', { name: 'Marks' }).click();
    await page.keyboard.press('m');
    expect(await bench.marks.count()).toBe(4);
    await page.getByText('type its length', { exact: true }).waitFor();
    await page.keyboard.press('Control+z');
    expect(await bench.marks.count()).toBe(3);
  });

  it('survive a file: everything out as JSON and in again; a damaged file is named and changes nothing', async () => {
    const bench = await open();
    await bench.addMarks(['15.8', '49.2']);
    const before = await bench.speed();
    const path = await bench.saveJson();
    const damaged = join(scratchFolder(), 'damaged.json');
    writeFileSync(damaged, readFileSync(path, 'utf8').replace('"closed"', '"half open"'));
    const chooser = bench.page.getByLabel('Experiment file to open');
    await chooser.setInputFiles(damaged);
    await bench.page
      .getByText(/ends: must be one of closed, open, but it is "half open"/)
      .first()
      .waitFor();
    await bench.page.getByRole('button', { name: 'Close without changes' }).click();
    await bench.goTo('Measure');
    await bench.deleteMark(2);
    await bench.goTo('Records');
    await chooser.setInputFiles(path);
    await bench.goTo('Measure');
    await expect.poll(() => bench.marks.count()).toBe(2);
    expect(await bench.speed()).toEqual(before);
  });
});

describe('apparatus', () => {
  it('takes decimal commas, °F and units, and says what is wrong with the rest', async () => {
    const bench = await open();
    await bench.addMarks(['15.8', '49.2']);
    await bench.goTo('Apparatus');
    await bench.fill('Air temperature', '70 °F');
    await expect
      .poll(() => bench.page.getByRole('textbox', { name: 'Air temperature' }).inputValue())
      .toMatch(/^21\.1/);
    await bench.fill('Inside diameter', '3,5 cm');
    await expect
      .poll(() => bench.page.getByRole('textbox', { name: 'Inside diameter' }).inputValue())
      .toBe('35');
    await bench.fill('Fork 1', '20');
    await bench.page.getByText('must be 64 to 4096 Hz, not 20 Hz').waitFor();
    await bench.goTo('Measure');
    await bench.page.getByText('Predicted speed').first().waitFor();
  });
});

describe('nothing moves under the eye', () => {
  it('when the first speed, doubts and a refused microphone come, picture and strip stay where they are', async () => {
    const bench = await open({ microphone: 'refused' });
    const { page } = bench;
    const places = () =>
      page.evaluate(() => {
        const root = document.querySelector('bench-app')?.shadowRoot;
        const column = root?.querySelector('bench-stage')?.shadowRoot?.querySelector('bench-column');
        return [column, root?.querySelector('bench-strip')].map(
          (element) => Math.round(element?.getBoundingClientRect().top ?? NaN) + scrollY,
        );
      });
    await page.getByRole('button', { name: 'Note these readings' }).click();
    await page.waitForTimeout(300);
    const before = await places();
    await bench.addMarks(['15.8', '49.2', '82.6', '60']);
    await page.getByRole('list', { name: 'Warnings' }).waitFor();
    expect(await places()).toEqual(before);
    // What is doubtful is one press away, from wherever the level is watched.
    await page.getByRole('button', { name: /^\d warnings?$/ }).click();
    await page.getByText('Mark 4 doesn’t fit and is left out of the fit').waitFor();

    await page.getByRole('radio', { name: 'Microphone' }).check();
    await page.waitForTimeout(300);
    const withMicrophone = await places();
    await bench.listen();
    await page.getByRole('region', { name: 'Listening ended' }).waitFor();
    expect(await places()).toEqual(withMicrophone);
  });
});

describe('access', () => {
  it.each([
    { width: 1280, height: 800 },
    { width: 820, height: 1180 },
    { width: 390, height: 844 },
  ])('axe finds nothing on any view in light and dark, $width px wide', async (viewport) => {
    const bench = await open({ viewport });
    await bench.addMarks(['15.8', '49.2', '30']);
    await bench.page.getByRole('button', { name: 'Note these readings' }).click();
    for (const view of VIEWS) {
      await bench.goTo(view);
      for (const colorScheme of ['light', 'dark'] as const) {
        await bench.page.emulateMedia({ colorScheme });
        await bench.page.waitForTimeout(300);
        const { violations } = await new AxeBuilder({ page: bench.page }).analyze();
        const found = violations.map(
          (violation) =>
            `${view}, ${colorScheme}: ${violation.id} at ${violation.nodes.map((node) => node.target.join(' ')).join('; ')}`,
        );
        expect(found).toEqual([]);
      }
    }
  });

  it('does the whole job on the practice column with the keyboard alone', async () => {
    const bench = await open();
    const { page } = bench;
    await page.keyboard.press('l');
    await page.getByRole('button', { name: 'Stop' }).waitFor();
    await page.waitForTimeout(2500);
    const handle = page.getByRole('slider', { name: 'Length of the column' });
    for (let presses = 0; presses < 80; presses += 1) {
      if (await handle.evaluate((element) => element.matches(':focus'))) break;
      await page.keyboard.press('Tab');
    }
    await page.keyboard.press('s');
    await page.waitForTimeout(1500);
    for (let millimetre = 0; millimetre < 110; millimetre += 1) await page.keyboard.press('ArrowRight');
    await page.getByText('type its length', { exact: true }).first().waitFor({ timeout: 15_000 });
    await page.keyboard.press('l');
    await page.keyboard.press('e');
    await page.keyboard.type('15,7');
    await page.keyboard.press('Enter');
    expect((await bench.speed()).speedMps).toBeGreaterThan(300);
    await page.keyboard.press('Escape');
  });

  it.each([
    ['at 320 px', { width: 320, height: 700 }],
    // Twice the size on a screen of 1280 × 800.
    ['at 200 % zoom', { width: 640, height: 400 }],
  ])('holds %s without anything running out of the page', async (_name, viewport) => {
    const bench = await open({ viewport });
    await bench.addMarks(['15.8']);
    for (const view of VIEWS) {
      await bench.goTo(view);
      await bench.page.waitForTimeout(300);
      const beyond = await bench.page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(beyond, view).toBeLessThanOrEqual(0);
      const hidden = await bench.page.getByRole('button').evaluateAll((buttons) =>
        buttons
          .filter((button) => {
            const box = button.getBoundingClientRect();
            return box.width > 0 && (box.left < 0 || box.right > innerWidth + 1);
          })
          .map((button) => button.textContent.trim()),
      );
      expect(hidden, view).toEqual([]);
    }
  });
});
