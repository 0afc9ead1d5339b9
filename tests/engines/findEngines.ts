import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { findChromium } from '../browser/findChromium.ts';

export type EngineName = 'chromium' | 'firefox' | 'webkit';

/** What the engines are started with; null for one that this machine hasn't. */
export interface EnginesFound {
  readonly chromium: { readonly browser: string };
  readonly firefox: { readonly browser: string } | null;
  /** The driver starts the browser, on a screen that is nowhere to be seen. */
  readonly webkit: { readonly driver: string; readonly browser: string; readonly screen: string } | null;
}

const PACKAGES = {
  firefox: ['firefox-esr'],
  webkit: [
    'webkit2gtk-driver',
    'xvfb',
    'gstreamer1.0-plugins-base',
    'gstreamer1.0-plugins-good',
    'gstreamer1.0-plugins-bad',
    'gstreamer1.0-libav',
  ],
} as const;
type OptionalEngine = keyof typeof PACKAGES;
const OPTIONAL_ENGINES = ['firefox', 'webkit'] as const satisfies readonly OptionalEngine[];
const TITLES: Readonly<Record<OptionalEngine, string>> = { firefox: 'Firefox', webkit: 'WebKit' };

/**
 * Where the three engines are. Chromium is installed where it is missing; a person may do without the other two, and
 * is told in a line each.
 * @param isEveryOneNeeded  as in CI: they are installed, too, and one that can't be had is an error
 * @throws Error with the line that tells how to get an engine
 */
export function findEngines(isEveryOneNeeded: boolean): EnginesFound {
  const chromium = { browser: findChromium() };
  if (isEveryOneNeeded) installMissing();
  const found = { chromium, ...present() };
  const missing = OPTIONAL_ENGINES.filter((name) => found[name] === null).map(
    (name) =>
      `${TITLES[name]} is not tried, because it isn’t here. On Debian: apt-get install ${PACKAGES[name].join(' ')}`,
  );
  if (missing.length > 0 && isEveryOneNeeded) throw new Error(missing.join('\n'));
  for (const line of missing) process.stderr.write(`${line}\n`);
  return found;
}

function present(): Pick<EnginesFound, OptionalEngine> {
  const firefox = pathOf('firefox-esr') ?? pathOf('firefox');
  const driver = pathOf('WebKitWebDriver');
  const screen = pathOf('Xvfb');
  const browser = miniBrowser();
  return {
    firefox: firefox === null ? null : { browser: firefox },
    webkit: driver === null || screen === null || browser === null ? null : { driver, browser, screen },
  };
}

/** By Debian's package manager, as whoever may: root, or somebody whom sudo asks nothing. */
function installMissing(): void {
  const now = present();
  const packages = OPTIONAL_ENGINES.filter((name) => now[name] === null).flatMap((name) => PACKAGES[name]);
  if (packages.length === 0 || pathOf('apt-get') === null) return;
  const before = process.getuid?.() === 0 ? [] : ['sudo', '-n'];
  const environment = ['env', 'DEBIAN_FRONTEND=noninteractive'];
  for (const words of [
    ['update', '-qq'],
    ['install', '-y', '-qq', '--no-install-recommends', ...packages],
  ]) {
    const [command = '', ...rest] = [...before, ...environment, 'apt-get', ...words];
    spawnSync(command, rest, { stdio: 'inherit' });
  }
}

function pathOf(command: string): string | null {
  try {
    return execFileSync('which', [command], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] }).trim();
  } catch {
    return null;
  }
}

/** It comes with WebKit’s own library, in no folder of commands. */
function miniBrowser(): string | null {
  const folders = ['/usr/lib', '/usr/libexec'].flatMap((folder) =>
    existsSync(folder) ? [folder, ...readdirSync(folder).map((name) => join(folder, name))] : [],
  );
  const paths = folders.map((folder) => join(folder, 'webkit2gtk-4.1', 'MiniBrowser'));
  return paths.find((path) => existsSync(path)) ?? null;
}
