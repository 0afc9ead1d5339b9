import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { build, preview } from 'vite';
import { findChromium } from '../../browser/findChromium.ts';
import { openPage } from '../../browser/support/openPage.ts';
import { slideRecording } from '../../support/slideRecording.ts';
import { writeMicrophoneFile } from '../../support/wavFile.ts';
import { measureFirstLoad } from './firstLoad.ts';
import { watchMainThread } from './mainThread.ts';
import type { MainThread } from './mainThread.ts';

/** What the page sets itself: share of a core, ms, bytes. */
const GOALS = { busyShare: 0.15, longestTaskMs: 50, scriptBytes: 130_000 } as const;
/** Time after the start in which the strip's chart loads and the room is learnt, s. */
const WARM_UP_S = 8;
const SAMPLE_RATE_HZ = 48_000;

const { values } = parseArgs({
  options: { seconds: { type: 'string', default: '60' }, profile: { type: 'boolean', default: false } },
});
const durationS = Number(values.seconds);
const folder = mkdtempSync(join(tmpdir(), 'bench-page-'));
await build({ logLevel: 'error', build: { outDir: join(folder, 'site'), emptyOutDir: true } });
const server = await preview({
  logLevel: 'warn',
  build: { outDir: join(folder, 'site') },
  preview: { port: 0, host: '127.0.0.1' },
});
const url = server.resolvedUrls?.local[0];
if (url === undefined) throw new Error('The preview server gave no address.');

try {
  const wav = join(folder, 'slides.wav');
  writeMicrophoneFile(wav, repeated(durationS + WARM_UP_S + 4), SAMPLE_RATE_HZ);
  const opened = await openPage({ chromiumPath: findChromium(), url: 'about:blank', microphoneWav: wav });
  const { page } = opened;
  try {
    const load = await measureFirstLoad(page, url);
    line(
      'First load, script',
      `${(load.scriptBytes / 1000).toFixed(1)} kB gzip`,
      load.scriptBytes <= GOALS.scriptBytes,
    );
    line('First load, page and style', `${(load.otherBytes / 1000).toFixed(1)} kB gzip`);
    line('Practice column on the page', `${load.columnMs.toFixed(0)} ms`);
    line('From Listen to “strike the fork”', `${load.listeningMs.toFixed(0)} ms`);
    await page.getByRole('button', { name: 'Stop' }).click();

    await page.getByRole('radio', { name: 'Microphone' }).check();
    await page.getByRole('button', { name: 'Listen', exact: true }).click();
    await page.waitForTimeout(WARM_UP_S * 1000);
    const found = await watchMainThread(page, durationS, values.profile);
    const flagged = await page.getByRole('group', { name: /^Mark \d+$/ }).count();
    print(found);
    line('Resonances flagged meanwhile', String(flagged), flagged > 0);
    if (opened.faults.length > 0) line('Errors', opened.faults.join('; '), false);
  } finally {
    await opened.close();
  }
} finally {
  await server.close();
  rmSync(folder, { recursive: true, force: true });
}

/** Two soundings amid talk, one after the other as often as they are needed. */
function repeated(seconds: number): Float32Array {
  const { samples } = slideRecording({ forkHz: 512, closed: true, seed: 3, talkDb: 0 });
  const all = new Float32Array(Math.round(seconds * SAMPLE_RATE_HZ));
  for (let at = 0; at < all.length; at += samples.length) {
    all.set(samples.subarray(0, Math.min(samples.length, all.length - at)), at);
  }
  return all;
}

function print(found: MainThread): void {
  process.stdout.write(`Microphone and strip, ${found.durationS} s:\n`);
  line('  Main thread busy', `${(100 * found.busyShare).toFixed(1)} %`, found.busyShare <= GOALS.busyShare);
  line(
    '  Longest task, processor time',
    `${found.longestCpuMs.toFixed(1)} ms`,
    found.longestCpuMs <= GOALS.longestTaskMs,
  );
  line('  Longest task, by the clock', `${found.longestTaskMs.toFixed(1)} ms`);
  line('  Tasks over 50 ms by the clock', String(found.tasksOver50Ms));
  for (const { name, ms } of found.functions)
    process.stdout.write(`${ms.toFixed(0).padStart(8)} ms  ${name}\n`);
}

function line(name: string, value: string, isMet?: boolean): void {
  const verdict = isMet === undefined ? '' : isMet ? '  goal met' : '  GOAL MISSED';
  process.stdout.write(`${name.padEnd(36)} ${value}${verdict}\n`);
}
