import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, inject, it } from 'vitest';
import { slideRecording } from '../support/slideRecording.ts';
import { writeWavFile } from '../support/wavFile.ts';
import { scratchFolder } from '../browser/support/benchPage.ts';
import { serveSite } from '../browser/support/siteServer.ts';
import { doMainJob } from './mainJob.ts';
import { Person } from './person.ts';
import { startEngine } from './startEngine.ts';
import { webKitConsole } from './webkitConsole.ts';

/** In which a started page has said what it says at its start, ms. */
const START_MS = 5000;

const found = inject('engines');
const truth = slideRecording({ forkHz: 512, closed: true, seed: 3, talkDb: 0 });
const path = join(scratchFolder(), 'slide.wav');
writeWavFile(path, truth.samples, truth.sampleRateHz);

describe.for(['chromium', 'firefox', 'webkit'] as const)('a lesson in %s', (name) => {
  it.skipIf(found[name] === null)(
    'goes from the first visit to a page without a network, with nothing on the console',
    { timeout: 300_000 },
    async () => {
      const folder = scratchFolder();
      const page = await startEngine(name, found, { folder });
      const site = await serveSite('dist', '/lab/bench/');
      try {
        await doMainJob({ person: new Person(page, folder), site, recording: { path, truth } });
        // Refusals of the content policy are among them.
        expect(await page.consoleLines()).toEqual([]);
      } finally {
        await page.close();
        await site.close();
      }
    },
  );
});

describe.skipIf(found.webkit === null)('the start in webkit', () => {
  const openInWebKit = (url: string, untilLoaded: () => Promise<void>): Promise<string[]> =>
    webKitConsole(found.webkit ?? expect.fail('no browser'), scratchFolder(), url, untilLoaded);

  it('puts nothing on the engine’s own console, which would be read', async () => {
    const talking = scratchFolder();
    writeFileSync(join(talking, 'index.html'), '<script>console.log("this is read")</script>');
    const talker = await serveSite(talking, '/');
    try {
      const lines = await openInWebKit(talker.url, () => pause(START_MS));
      expect(lines).toEqual([expect.stringContaining('CONSOLE LOG this is read')]);
    } finally {
      await talker.close();
    }
    const site = await serveSite('dist', '/lab/bench/');
    try {
      const lines = await openInWebKit(site.url, async () => {
        // The page asks for it when it has begun.
        await expect.poll(() => site.asked, { timeout: 30_000 }).toContain('/lab/bench/service-worker.js');
        await pause(START_MS);
      });
      expect(lines).toEqual([]);
    } finally {
      await site.close();
    }
  });
});
