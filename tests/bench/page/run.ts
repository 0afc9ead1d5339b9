import { mkdtempSync, rmSync } from 'node:fs';
import { cpus, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { build, preview } from 'vite';
import { openBrowser, openPage } from '../../browser/support/openPage.ts';
import { findEngines } from '../../engines/findEngines.ts';
import { VOICES_OPTION, voicesOrEnd } from '../detector/voices/chooseVoices.ts';
import { slideRecording } from '../../support/slideRecording.ts';
import { writeMicrophoneFile } from '../../support/wavFile.ts';
import { measureEngines } from './engines.ts';
import { measureFirstLoad } from './firstLoad.ts';
import { addStampTo, flagDelays, WATCH_FOR_FLASH } from './flagDelay.ts';
import { addProgrammeTo, heapGrowth } from './heapGrowth.ts';
import { watchMainThread } from './mainThread.ts';
import { pageLines } from './pageLines.ts';
import type { PageFindings } from './pageLines.ts';
import { readyCold, readyFromWorker } from './readyTime.ts';

/**
 * What the page costs: bytes and time until it can be used, the main thread while it listens, the delay of a flag,
 * memory over an hour; then what every engine can tell, side by side. `--json` prints the findings as they are; `--profile` names the functions that took the time.
 */

/** Time after the start in which the strip's chart loads and the room is learnt, s. */
const WARM_UP_S = 8;
const SAMPLE_RATE_HZ = 48_000;
const OPENINGS = 5;

const { values } = parseArgs({
  options: {
    seconds: { type: 'string', default: '60' },
    /** Simulated minutes after which memory is measured; empty leaves it out. */
    minutes: { type: 'string', default: '1,10,60' },
    voices: VOICES_OPTION,
    /** Only what Chromium tells. */
    'no-engines': { type: 'boolean', default: false },
    profile: { type: 'boolean', default: false },
    json: { type: 'boolean', default: false },
  },
});
const durationS = Number(values.seconds);
const minutes = values.minutes
  .split(',')
  .filter((text) => text !== '')
  .map(Number);
if (!(durationS > 0) || !minutes.every((minute) => minute > 0)) {
  process.stderr.write(
    'Usage: npm run bench:page -- [--seconds 60] [--minutes 1,10,60] [--voices generated|recorded|synthesised] [--no-engines] [--profile] [--json]\n',
  );
  process.exit(2);
}
const voices = voicesOrEnd(values.voices);
process.stderr.write(`Voices: ${voices.kind}.\n`);

const folder = mkdtempSync(join(tmpdir(), 'bench-page-'));
const site = join(folder, 'site');
await build({ logLevel: 'error', build: { outDir: site, emptyOutDir: true } });
addStampTo(site);
if (minutes.length > 0) addProgrammeTo(site, voices);
const server = await preview({
  logLevel: 'warn',
  build: { outDir: site },
  preview: { port: 0, host: '127.0.0.1' },
});
const url = server.resolvedUrls?.local[0];
if (url === undefined) throw new Error('The preview server gave no address.');
const engines = findEngines(false);
const chromiumPath = engines.chromium.browser;

try {
  const findings = await measure(url);
  process.stdout.write(values.json ? `${JSON.stringify(findings)}\n` : `${pageLines(findings).join('\n')}\n`);
} finally {
  await server.close();
  rmSync(folder, { recursive: true, force: true });
}

async function measure(url: string): Promise<PageFindings> {
  const loadBefore = loadavg()[0] ?? 0;
  const live = await listen(url);
  const browser = await openBrowser({ chromiumPath });
  try {
    const cold = await readyCold(browser, chromiumPath, url, OPENINGS);
    const fromWorker = await readyFromWorker(browser, chromiumPath, url, OPENINGS);
    const heap = minutes.length === 0 ? [] : await heapGrowth(browser, chromiumPath, url, minutes);
    return {
      ...live,
      cold,
      fromWorker,
      heap,
      engines: values['no-engines'] ? [] : await inEveryEngine(),
      machine: { cores: cpus().length, loadBefore, loadAfter: loadavg()[0] ?? 0 },
    };
  } finally {
    await browser.close();
  }
}

/** A first visit that listens to the practice column, then a minute of the microphone. */
async function listen(url: string): Promise<Pick<PageFindings, 'load' | 'mainThread' | 'flags' | 'faults'>> {
  const wav = join(folder, 'slides.wav');
  writeMicrophoneFile(wav, repeated(durationS + WARM_UP_S + 4), SAMPLE_RATE_HZ);
  const opened = await openPage({
    chromiumPath,
    url: 'about:blank',
    microphoneWav: wav,
    beforeScripts: WATCH_FOR_FLASH,
  });
  const { page } = opened;
  try {
    const load = await measureFirstLoad(page, url);
    await page.getByRole('button', { name: 'Stop' }).click();
    await page.getByRole('radio', { name: 'Microphone' }).check();
    await page.getByRole('button', { name: 'Listen', exact: true }).click();
    await page.waitForTimeout(WARM_UP_S * 1000);
    const mainThread = await watchMainThread(page, durationS, values.profile);
    return { load, mainThread, flags: await flagDelays(page), faults: opened.faults };
  } finally {
    await opened.close();
  }
}

/** The microphone's minute in each engine, as a file that is played into the system's own microphone. */
function inEveryEngine(): Promise<PageFindings['engines']> {
  const wav = join(folder, 'played.wav');
  writeMicrophoneFile(wav, repeated(durationS), SAMPLE_RATE_HZ);
  return measureEngines(engines, site, folder, wav).catch((error: unknown) => {
    // What was measured before is worth printing all the same.
    process.stderr.write(`The engines were not compared: ${String(error)}\n`);
    return [];
  });
}

/** Two soundings amid talk, one after the other as often as they are needed. */
function repeated(seconds: number): Float32Array {
  const { samples } = slideRecording({ forkHz: 512, closed: true, seed: 3, talkDb: 0, voices });
  const all = new Float32Array(Math.round(seconds * SAMPLE_RATE_HZ));
  for (let at = 0; at < all.length; at += samples.length) {
    all.set(samples.subarray(0, Math.min(samples.length, all.length - at)), at);
  }
  return all;
}
