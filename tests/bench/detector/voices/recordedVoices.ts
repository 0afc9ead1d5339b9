import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readWav, type WavSound } from '../wav.ts';
import { ClipVoices } from './clipVoices.ts';
import type { Voices } from './voices.ts';

/** Where Debian's packages of spoken words put their files. */
const VOICE_FOLDERS = ['/usr/share/asterisk/sounds', '/usr/share/sounds/alsa'];
const NOT_SPEECH = /silence|beep|noise|jingle|tone\.wav|monkeys|\/letters\/|spy-/i;
/** Fewer would repeat one another. */
const LEAST_FILES = 20;

/**
 * Voices that people recorded, for benchmarks alone: no test may depend on what is installed.
 * @throws Error that says which packages bring them
 */
export function recordedVoices(): Voices {
  const paths = VOICE_FOLDERS.flatMap(listWavs).sort();
  if (paths.length < LEAST_FILES) {
    throw new Error(
      `--voices recorded: ${paths.length} recordings in ${VOICE_FOLDERS.join(' and ')}, at least ${LEAST_FILES} are needed. Debian: apt-get install asterisk-core-sounds-en-wav alsa-utils.`,
    );
  }
  const decoded = new Map<string, WavSound | null>();
  return new ClipVoices('recorded', (random) => {
    const path = random.pick(paths);
    let sound = decoded.get(path);
    if (sound === undefined) {
      sound = readWav(readFileSync(path));
      decoded.set(path, sound);
    }
    return sound;
  });
}

function listWavs(folder: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((name) => join(folder, name))
    .filter((path) => path.endsWith('.wav') && !NOT_SPEECH.test(path));
}
