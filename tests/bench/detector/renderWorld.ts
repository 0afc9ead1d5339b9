import { spawnSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { join, resolve } from 'node:path';

/**
 * Lets an independent simulator write recordings: `python3 make.py FOLDER FIRST COUNT` in its folder. The simulator isn't
 * part of this repository. What it needs of Debian, recorded voices among it, is installed first where it is missing.
 */
const USAGE =
  'Usage: node --import tsx/esm tests/bench/detector/renderWorld.ts SIMULATOR_FOLDER OUT FIRST COUNT';
const PACKAGES = [
  'python3-numpy',
  'python3-scipy',
  'ffmpeg',
  ...['en', 'fr', 'it', 'ru', 'es'].map((language) => `asterisk-core-sounds-${language}-g722`),
];

const [simulator, out, first, count] = process.argv.slice(2);
if (count === undefined) {
  console.error(USAGE);
  process.exit(2);
}
const isThere = spawnSync('dpkg', ['-s', ...PACKAGES], { stdio: 'ignore' }).status === 0;
if (!isThere) run('apt-get', ['install', '-y', ...PACKAGES]);
mkdirSync(out, { recursive: true });
// Without a cache of byte code: the simulator's folder stays as it is.
run('python3', ['-B', join(resolve(simulator), 'make.py'), resolve(out), first, count]);

function run(command: string, parameters: readonly string[]): void {
  const { status } = spawnSync(command, parameters, { stdio: 'inherit' });
  if (status !== 0) process.exit(status ?? 1);
}
