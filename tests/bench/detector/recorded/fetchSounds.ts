import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { SOUND_PACKAGES } from './soundFiles.ts';

/**
 * Fetches sounds that people recorded, for benchmarks alone: packages of Debian's main section are unpacked into a folder,
 * nothing of them is installed or run. What reads and plays them is installed where it is missing.
 */
const USAGE = 'Usage: node --import tsx/esm tests/bench/detector/recorded/fetchSounds.ts FOLDER';
const PROGRAMS = ['ffmpeg', 'fluidsynth'];

const [folder] = process.argv.slice(2);
if (folder === undefined) {
  console.error(USAGE);
  process.exit(2);
}
const areThere = spawnSync('dpkg', ['-s', ...PROGRAMS], { stdio: 'ignore' }).status === 0;
if (!areThere) run('apt-get', ['install', '-y', '--no-install-recommends', ...PROGRAMS]);
mkdirSync(folder, { recursive: true });
const fetched = mkdtempSync(join(tmpdir(), 'sounds-'));
try {
  run('apt-get', ['download', ...SOUND_PACKAGES], fetched);
  for (const name of readdirSync(fetched)) run('dpkg', ['-x', join(fetched, name), resolve(folder)]);
} finally {
  rmSync(fetched, { recursive: true });
}

function run(command: string, parameters: readonly string[], cwd?: string): void {
  const { status } = spawnSync(command, parameters, { stdio: ['ignore', 'inherit', 'inherit'], cwd });
  if (status !== 0) throw new Error(`${command} ${parameters[0]}: status ${status}`);
}
