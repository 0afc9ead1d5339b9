import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { WavReader, readCues } from '../../src/capture/wav.ts';
import { scratchFolder } from './support/benchPage.ts';
import { eachBench } from './support/eachBench.ts';

const { open, current } = eachBench();

describe('sound, if wanted', () => {
  it('is kept on request with its mark, goes out as WAV with a cue point, and is heard again', async () => {
    const bench = await open();
    const { page } = bench;
    await bench.goTo('Records');
    const card = page.getByRole('region', { name: 'Saved sound' });
    expect(await card.getByRole('checkbox').isChecked()).toBe(false);
    await card.getByRole('checkbox').check();
    await bench.goTo('Measure');
    await page.getByText('Sound is being saved').waitFor();
    const handle = page.getByRole('slider', { name: 'Length of the column' });
    await handle.fill('12');
    await bench.listen();
    await page.waitForTimeout(3000);
    await page.getByRole('button', { name: 'Strike the fork' }).click();
    await page.waitForTimeout(1500);
    await handle.fill('20');
    await bench.lengthOf(1).waitFor({ timeout: 30_000 });
    const flaggedS = await bench.flagTimeS(1);
    await page.getByRole('button', { name: 'Damp it' }).click();
    await page.waitForTimeout(3000);
    await bench.stop();
    await bench.lengthOf(1).fill('15,8');
    await bench.lengthOf(1).press('Enter');
    await bench.goTo('Records');
    await card.getByText(/marks? 1\b/).waitFor();
    const waiting = page.waitForEvent('download');
    await card.getByRole('button', { name: 'Save sound 1 as WAV' }).click();
    const wav = join(scratchFolder(), 'sounding.wav');
    await (await waiting).saveAs(wav);

    const bytes = new Uint8Array(readFileSync(wav));
    const cues = await readCues(
      (at, length) => Promise.resolve(bytes.subarray(at, at + length)),
      bytes.length,
    );
    const cue = cues.find(({ label }) => label === 'Mark 1, 512 Hz, closed, 15.80 cm');
    // The length was right before the level peaked.
    const centre = cues.find(({ label }) => label?.startsWith('Centre of mark 1'));
    expect(centre?.frame).toBeLessThan(cue?.frame ?? NaN);
    const reader = await WavReader.fromBytes(bytes);
    const { sampleRateHz } = reader.format;
    expect(reader.durationS).toBeGreaterThan(3);
    // The margin before the strike is the room alone; the fork is far louder.
    const levelOf = async (fromS: number, toS: number): Promise<number> => {
      const [samples = new Float32Array(1)] = await reader.readChannels(
        Math.round(fromS * sampleRateHz),
        Math.round((toS - fromS) * sampleRateHz),
      );
      return Math.sqrt(samples.reduce((sum, sample) => sum + sample ** 2, 0) / samples.length);
    };
    expect(await levelOf(1.2, 1.7)).toBeGreaterThan(4 * (await levelOf(0, 0.5)));

    // Again from the notebook: the same mark gets its evidence anew, with its time in the kept sound.
    await card.getByRole('button', { name: 'Listen to sound 1 again' }).click();
    await bench.goTo('Measure');
    const cueS = (cue?.frame ?? 0) / sampleRateHz;
    expect(cueS).toBeLessThan(flaggedS);
    await expect.poll(() => bench.flagTimeS(1)).toBeLessThan(cueS + 0.5);
    expect(await bench.marks.count()).toBe(1);
    // As it was typed.
    expect(await bench.lengthOf(1).inputValue()).toBe('15,8');

    // And the file in a browser that has never seen it: the mark is in place, with its length.
    expect(current()?.faults).toEqual([]);
    await current()?.close();
    const elsewhere = await open();
    await elsewhere.page.getByRole('radio', { name: 'Recording' }).check();
    const choosing = elsewhere.page.waitForEvent('filechooser');
    await elsewhere.page.getByRole('button', { name: 'Open a recording' }).click();
    await (await choosing).setFiles(wav);
    await expect.poll(() => elsewhere.marks.count()).toBe(1);
    expect(await elsewhere.lengthOf(1).inputValue()).toBe('15.8');
    expect(Math.abs((await elsewhere.flagTimeS(1)) - cueS)).toBeLessThan(0.75);
    expect(current()?.faults).toEqual([]);
  });

  it('is deleted on request, and its room is free again', async () => {
    const bench = await open();
    const { page } = bench;
    await bench.goTo('Records');
    await page.getByRole('region', { name: 'Saved sound' }).getByRole('checkbox').check();
    await bench.goTo('Measure');
    await bench.listen();
    await page.waitForTimeout(2500);
    await page.getByRole('button', { name: 'Strike the fork' }).click();
    await page.waitForTimeout(4000);
    await bench.stop();
    await page.getByRole('button', { name: 'Stop saving sound' }).click();
    await page.getByText('Sound is being saved').waitFor({ state: 'detached' });
    await bench.goTo('Records');
    const erase = page.getByRole('button', { name: 'Erase sound 1' });
    const question = page.getByRole('dialog', { name: 'Erase sound 1?' });
    for (const sayNo of ['Keep it', 'Escape']) {
      await erase.click();
      if (sayNo === 'Escape') await page.keyboard.press('Escape');
      else await question.getByRole('button', { name: sayNo }).click();
      await question.waitFor({ state: 'hidden' });
      expect(await erase.count()).toBe(1);
    }
    await erase.click();
    await question.getByRole('button', { name: 'Erase it' }).click();
    await page.getByText(/All experiments use 0\.0 MB of 100 MB/).waitFor();
  });
});
