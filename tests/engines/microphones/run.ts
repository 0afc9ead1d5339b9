import { mkdtempSync, rmSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import { serveSite } from '../../browser/support/siteServer.ts';
import { slideRecording } from '../../support/slideRecording.ts';
import { writeMicrophoneFile } from '../../support/wavFile.ts';
import { findEngines } from '../findEngines.ts';
import type { EngineName } from '../findEngines.ts';
import { Person } from '../person.ts';
import { startEngine } from '../startEngine.ts';
import { hearAndLose } from './hearAndLose.ts';
import { startSoundServer } from './soundServer.ts';

/**
 * A microphone of the operating system in every engine, where the tests' own is made by the browser: a recording is
 * played into it and heard, it is unplugged, and it is plugged in again. Sensitive to the machine's load, and so no
 * part of `npm test`.
 */
const ENGINES = ['chromium', 'firefox', 'webkit'] as const satisfies readonly EngineName[];

const found = findEngines(true);
const folder = mkdtempSync(join(tmpdir(), 'microphones-'));
const built = join(folder, 'site');
await build({ logLevel: 'error', build: { outDir: built, emptyOutDir: true } });
// Its room is at -65 dB of full scale: a microphone that hears nothing at all is another case.
const truth = slideRecording({ forkHz: 512, closed: true, seed: 3, talkDb: -20 });
const wav = join(folder, 'slide.wav');
writeMicrophoneFile(wav, truth.samples, truth.sampleRateHz);

let failed = 0;
try {
  for (const name of ENGINES) {
    const own = mkdtempSync(join(folder, `${name}-`));
    const sound = await startSoundServer(join(own, 'sound'));
    const site = await serveSite(built, '/');
    try {
      const page = await startEngine(name, found, {
        folder: own,
        isRealMicrophone: true,
        environment: sound.environment,
      });
      try {
        await page.goTo(site.url);
        const lines = await hearAndLose(new Person(page, own), sound, wav, truth);
        process.stdout.write(`${page.version}: ${lines.join('; ')}\n`);
      } finally {
        await page.close();
      }
    } catch (error) {
      failed += 1;
      process.stdout.write(`${name}: FAILED, load ${(loadavg()[0] ?? 0).toFixed(1)}: ${String(error)}\n`);
    } finally {
      await site.close();
      await sound.end();
    }
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
process.stdout.write(`${ENGINES.length - failed} passed, ${failed} failed\n`);
process.exitCode = failed === 0 ? 0 : 1;
