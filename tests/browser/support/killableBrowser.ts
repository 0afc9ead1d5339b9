import { spawn } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { chromium } from 'playwright-core';
import type { Page } from 'playwright-core';

/** A Chromium with a profile on the disk whose process can be ended without a word, as by a flat battery. */
export interface KillableBrowser {
  readonly page: Page;
  /** Ends all its processes at once; nothing gets the chance to tidy up. */
  kill(): Promise<void>;
}

/** @param profile  a folder that stays from one browser to the next */
export async function openKillable(
  chromiumPath: string,
  profile: string,
  url: string,
): Promise<KillableBrowser> {
  const portFile = join(profile, 'DevToolsActivePort');
  for (const left of ['DevToolsActivePort', 'SingletonLock', 'SingletonCookie', 'SingletonSocket']) {
    rmSync(join(profile, left), { force: true });
  }
  const child = spawn(
    chromiumPath,
    [
      '--headless=new',
      '--no-sandbox',
      '--disable-gpu',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--remote-debugging-port=0',
      `--user-data-dir=${profile}`,
      'about:blank',
    ],
    // A group of its own, so that exactly its processes are ended.
    { detached: true, stdio: 'ignore' },
  );
  try {
    for (let waited = 0; !existsSync(portFile) || readFileSync(portFile, 'utf8') === ''; waited += 1) {
      if (waited > 600) throw new Error('Chromium did not start within 30 s.');
      await pause(50);
    }
    const port = readFileSync(portFile, 'utf8').split('\n')[0] ?? '';
    const browser = await chromium.connectOverCDP(`http://127.0.0.1:${port}`);
    const context = browser.contexts()[0];
    if (context === undefined) throw new Error('Chromium has no window.');
    const page = context.pages()[0] ?? (await context.newPage());
    await page.goto(url);
    return { page, kill: () => killGroup(child) };
  } catch (error) {
    await killGroup(child);
    throw error;
  }
}

function killGroup(child: ChildProcess): Promise<void> {
  return new Promise((resolve) => {
    if (child.pid === undefined || child.exitCode !== null || child.signalCode !== null) {
      resolve();
      return;
    }
    child.once('exit', () => resolve());
    process.kill(-child.pid, 'SIGKILL');
  });
}
