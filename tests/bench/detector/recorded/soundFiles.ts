import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

/** Packages of Debian's main section that hold what people recorded. */
export const SOUND_PACKAGES = [
  'asterisk-moh-opsound-wav',
  'fluid-soundfont-gm',
  'minetest-data',
  'sonic-pi-samples',
  'tuxpaint-stamps-default',
] as const;

/** Which half of the sounds: those that may be learned from, or those that only tell what was learned. */
export type Half = 'learn' | 'tell';

/** Sounds are decoded at this rate, Hz. */
export const CLIP_RATE_HZ = 48_000;

/** What is recorded of each kind, by what its paths hold. */
const CLIPS = {
  guitar: /samples\/guit_/,
  music: /asterisk\/moh\/|music\/(string|wind)\/|ambi_piano|ambi_choir/,
  glass: /ambi_glass|dishes\/(bottle|glass)|break_glass|glass_(footstep|door)|perc_bell/,
  water: /env_sounds_water|water_footstep|household\/(toilet|kettle)|cool_lava|ambi_sauna/,
  machine: /Washing-machine|vacuum_cleaner|tools\/saw|3d_printer|cart_moving|furnace_active|vinyl_hiss/,
  animals: /stamps\/animals\/|misc_crow/,
  taps: /(wood|metal|hard|gravel|dirt)_footstep|place_node|dug_node|dug_metal|dig_|doors_|chest_|tools\/(hammer|mallet)|tabla_|perc_(snap|door|impact)|camera_35mm|percussion\/drum/,
} as const;

export type ClipKind = keyof typeof CLIPS;

export const CLIP_KINDS = Object.keys(CLIPS) as readonly ClipKind[];

const EXTENSION = /\.(wav|ogg|flac)$/;
/** The words that name a drawing, in many languages. */
const SPOKEN = /_desc[_.]/;

/** Sounds that were fetched into a folder, decoded when they are asked for. */
export class SoundFiles {
  private readonly paths: readonly string[];
  private readonly decoded = new Map<string, Float32Array>();

  /**
   * @param folder  that `fetchSounds.ts` filled
   * @throws Error where a kind of sound has no files for both halves
   */
  constructor(private readonly folder: string) {
    const share = join(folder, 'usr', 'share');
    const names = existsSync(share) ? readdirSync(share, { recursive: true, encoding: 'utf8' }) : [];
    this.paths = names
      .filter((name) => EXTENSION.test(name) && !SPOKEN.test(name))
      .sort()
      .map((name) => join(share, name));
    const lacking = CLIP_KINDS.filter((kind) => this.list(kind, 'tell').length === 0);
    if (lacking.length > 0) {
      throw new Error(
        `${folder}: no recordings of ${lacking.join(', ')}. tests/bench/detector/recorded/fetchSounds.ts fetches them.`,
      );
    }
  }

  /** Every other file of a kind, in the order of their names: the other half never sounds. */
  list(kind: ClipKind, half: Half): readonly string[] {
    const own = this.paths.filter((path) => CLIPS[kind].test(path));
    return own.filter((_, index) => index % 2 === (half === 'learn' ? 0 : 1));
  }

  /** Sampled instruments (SoundFont 2). */
  soundFont(): string {
    return join(this.folder, 'usr', 'share', 'sounds', 'sf2', 'FluidR3_GM.sf2');
  }

  /** One file, mono, at CLIP_RATE_HZ. @throws Error with what ffmpeg said */
  clip(path: string): Float32Array {
    const known = this.decoded.get(path);
    if (known !== undefined) return known;
    const samples = decode(path);
    this.decoded.set(path, samples);
    return samples;
  }
}

function decode(path: string): Float32Array {
  const to = ['-ac', '1', '-ar', String(CLIP_RATE_HZ), '-f', 'f32le', '-'];
  const { status, stdout, stderr } = spawnSync('ffmpeg', ['-v', 'error', '-i', path, ...to], {
    maxBuffer: 2 ** 30,
  });
  if (status !== 0) throw new Error(`ffmpeg: ${stderr.toString()}`);
  return new Float32Array(stdout.buffer.slice(stdout.byteOffset, stdout.byteOffset + stdout.length));
}
