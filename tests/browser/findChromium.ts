import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chromium } from 'playwright-core';

const COMMANDS = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'];

/**
 * Path of a full Chromium, installed where there is none: Debian's package if this user may install, else
 * Playwright's own download.
 * @throws Error with the one line that tells how to get a browser
 */
export function findChromium(): string {
  const present = installedChromium();
  if (present !== null) return present;
  process.stderr.write('No Chromium found: installing one for the browser tests…\n');
  if (process.getuid?.() === 0 && spawnSync('apt-get', ['--version']).status === 0) {
    spawnSync('apt-get', ['update', '-qq'], { stdio: 'inherit' });
    spawnSync('apt-get', ['install', '-y', '-qq', 'chromium'], {
      stdio: 'inherit',
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
  }
  const installed = installedChromium();
  if (installed !== null) return installed;
  spawnSync('npx', ['playwright-core', 'install', 'chromium'], { stdio: 'inherit' });
  const downloaded = installedChromium();
  if (downloaded !== null) return downloaded;
  throw new Error(
    'The browser tests need Chromium: install your system’s "chromium" package (Debian: apt-get install chromium) or set CHROMIUM_PATH to a browser you have.',
  );
}

function installedChromium(): string | null {
  const named = process.env['CHROMIUM_PATH'];
  if (named !== undefined && existsSync(named)) return named;
  for (const command of COMMANDS) {
    try {
      return execFileSync('which', [command], { encoding: 'utf8' }).trim();
    } catch {
      // Not under this name; try the next.
    }
  }
  const downloaded = chromium.executablePath();
  return existsSync(downloaded) ? downloaded : null;
}
