import { join } from 'node:path';
import { describe, expect, inject, it } from 'vitest';
import { slideRecording } from '../support/slideRecording.ts';
import { writeWavFile } from '../support/wavFile.ts';
import { scratchFolder } from '../browser/support/benchPage.ts';
import { serveSite } from '../browser/support/siteServer.ts';
import { doMainJob } from './mainJob.ts';
import { Person } from './person.ts';
import { startEngine } from './startEngine.ts';

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
