import { cpSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { loadavg } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { serveSite } from '../../browser/support/siteServer.ts';
import type { EnginePage } from '../../engines/engine.ts';
import type { EngineName, EnginesFound } from '../../engines/findEngines.ts';
import { startSoundServer } from '../../engines/microphones/soundServer.ts';
import type { SoundServer } from '../../engines/microphones/soundServer.ts';
import { Person } from '../../engines/person.ts';
import { startEngine } from '../../engines/startEngine.ts';
import { WATCH_FOR_FLASH } from './flagDelay.ts';
import type { FlagDelay } from './flagDelay.ts';
import { treeUse } from './processTree.ts';
import { WATCH_FOR_COLUMN } from './readyTime.ts';

/**
 * The page's cost in each engine, by what every engine can tell: the page's own clock, and the system's accounts of the
 * browser and all its processes. Only Chromium tells what its main thread does; in the others the longest pause between
 * two ticks of a timer stands for it. The microphone is the system's.
 */
export interface EngineFindings {
  readonly version: string;
  /** From the navigation's start to the handle and the Listen button being drawn, ms, each opening. */
  readonly readyMs: readonly number[];
  /** Processor time of all its processes over that of the clock while it listens; null where the system doesn't say. */
  readonly cores: number | null;
  readonly longestPauseMs: number;
  readonly flags: readonly FlagDelay[];
  /** Memory of all its processes before and after listening, MB; null where the system doesn't say. */
  readonly memoryMb: { readonly before: number; readonly after: number } | null;
  /** One-minute load average of the machine meanwhile. */
  readonly load: number;
}

const ENGINES = ['chromium', 'firefox', 'webkit'] as const satisfies readonly EngineName[];
const OPENINGS = 5;
/** Until the strip's chart is there and the room is learnt, ms. */
const WARM_UP_MS = 8000;
const REST_MS = 1500;
/** Ticks of a timer that tells how long the page was kept from anything else. */
const WATCH_PAUSES = `(() => {
  window.longestPauseMs = 0;
  let last = performance.now();
  setInterval(() => {
    const now = performance.now();
    window.longestPauseMs = Math.max(window.longestPauseMs, now - last);
    last = now;
  }, 10);
})();`;

/**
 * @param site  the built one, with the audio thread's stamp
 * @param wav  what the microphone hears, at least once
 */
export async function measureEngines(
  found: EnginesFound,
  site: string,
  folder: string,
  wav: string,
): Promise<EngineFindings[]> {
  const watched = join(folder, 'watched');
  cpSync(site, watched, { recursive: true });
  writeFileSync(join(watched, 'bench-watch.js'), `${WATCH_FOR_COLUMN}\n${WATCH_FOR_FLASH}`);
  const page = join(watched, 'index.html');
  writeFileSync(
    page,
    readFileSync(page, 'utf8').replace('<title>', '<script src="./bench-watch.js"></script><title>'),
  );
  const findings: EngineFindings[] = [];
  for (const name of ENGINES.filter((one) => found[one] !== null)) {
    const own = mkdtempSync(join(folder, `${name}-`));
    const sound = await startSoundServer(join(own, 'sound'));
    const host = await serveSite(watched, '/');
    try {
      const options = { folder: own, isRealMicrophone: true, environment: sound.environment };
      const page = await startEngine(name, found, options);
      try {
        findings.push(await measure(page, new Person(page, own), host.url, sound, wav));
      } finally {
        await page.close();
      }
    } finally {
      await host.close();
      await sound.end();
    }
  }
  return findings;
}

async function measure(
  page: EnginePage,
  person: Person,
  url: string,
  sound: SoundServer,
  wav: string,
): Promise<EngineFindings> {
  const readyMs: number[] = [];
  for (let i = 0; i < OPENINGS; i += 1) {
    await (i === 0 ? page.goTo(url) : page.reload());
    readyMs.push(
      await person.until('the practice column', () =>
        page.evaluate<number | null>('window.columnReadyMs ?? null'),
      ),
    );
    await pause(REST_MS);
  }
  const before = treeUse(page.processId);
  await person.click('radio', 'Microphone');
  await person.click('button', 'Listen');
  await person.waitFor('button', 'Stop');
  await pause(WARM_UP_MS);
  await page.evaluate(WATCH_PAUSES.replace(/;$/, ''));
  const cpuBefore = treeUse(page.processId);
  const startMs = performance.now();
  await sound.play(wav);
  const durationS = (performance.now() - startMs) / 1000;
  const after = treeUse(page.processId);
  return {
    version: page.version,
    readyMs,
    cores: after === null || cpuBefore === null ? null : (after.cpuS - cpuBefore.cpuS) / durationS,
    longestPauseMs: await page.evaluate<number>('window.longestPauseMs'),
    flags: await page.evaluate<FlagDelay[]>('window.flagDelays'),
    memoryMb: before === null || after === null ? null : { before: before.memoryMb, after: after.memoryMb },
    load: loadavg()[0] ?? 0,
  };
}
