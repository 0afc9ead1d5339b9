import { spawn } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { StartOptions } from './engine.ts';

/** High enough for a whole view in one picture. */
const SIZE = '1600x6000x24';

/** A screen that nobody sees. */
export interface HiddenScreen {
  /** What a program is given so that it draws there. */
  readonly environment: Readonly<Record<string, string>>;
  end(): void;
}

/** @param path  of the X server without a display */
export async function startScreen(path: string): Promise<HiddenScreen> {
  const server = spawn(path, ['-displayfd', '1', '-screen', '0', SIZE, '-nolisten', 'tcp'], {
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  try {
    return { environment: { DISPLAY: `:${await firstLine(server)}` }, end: () => server.kill() };
  } catch (error) {
    server.kill();
    throw error;
  }
}

/** Settings that are nobody's own: downloads go to the folder, and GTK draws in the scheme that is asked for. */
export function webKitHome(options: StartOptions): Record<string, string> {
  const settings = join(options.folder, '.config');
  mkdirSync(settings, { recursive: true });
  writeFileSync(join(settings, 'user-dirs.dirs'), `XDG_DOWNLOAD_DIR="${options.folder}"\n`);
  return {
    HOME: options.folder,
    XDG_CONFIG_HOME: settings,
    XDG_CACHE_HOME: join(options.folder, '.cache'),
    XDG_DATA_HOME: join(options.folder, '.data'),
    GTK_THEME: options.colorScheme === 'dark' ? 'Adwaita:dark' : 'Adwaita',
    LIBGL_ALWAYS_SOFTWARE: '1',
  };
}

/** The number of the screen, as soon as there is one. */
function firstLine(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('exit', () => reject(new Error('The screen without a display did not start.')));
    child.stdout?.once('data', (data: Buffer) => resolve(String(data).trim()));
  });
}
