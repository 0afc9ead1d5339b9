import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { between } from '../../bench/detector/interpolation.ts';
import { rootMeanSquare } from '../../bench/detector/noises.ts';
import { midiFile, variableLength } from '../../bench/detector/recorded/playedNotes.ts';
import { recordedCompany } from '../../bench/detector/recorded/recordedCompany.ts';
import { practisedWorld, recordedWorld } from '../../bench/detector/recorded/recordedWorld.ts';
import { CLIP_KINDS, CLIP_RATE_HZ, SoundFiles } from '../../bench/detector/recorded/soundFiles.ts';
import { Random } from '../../bench/detector/random.ts';
import { GENERATED_VOICES } from '../../bench/detector/voices/voices.ts';

const folder = mkdtempSync(join(tmpdir(), 'sounds-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Files named as the packages name theirs, two or more of each kind; nothing is in them. */
const NAMES = [
  'asterisk/moh/a_piece.wav',
  'asterisk/moh/another.wav',
  'sonic-pi/samples/guit_a.flac',
  'sonic-pi/samples/guit_b.flac',
  'sonic-pi/samples/ambi_glass_a.flac',
  'sonic-pi/samples/ambi_glass_b.flac',
  'sonic-pi/samples/loop_3d_printer.flac',
  'sonic-pi/samples/vinyl_hiss.flac',
  'games/env_sounds_water.1.ogg',
  'games/env_sounds_water.2.ogg',
  'games/default_wood_footstep.1.ogg',
  'games/default_wood_footstep.2.ogg',
  'tuxpaint/stamps/animals/cat.ogg',
  'tuxpaint/stamps/animals/dog.ogg',
  'tuxpaint/stamps/animals/dog_desc.ogg',
  'tuxpaint/stamps/animals/dog_desc_fr.ogg',
];
for (const name of NAMES) {
  const path = join(folder, 'usr', 'share', name);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, '');
}

/** Clips that are noise, so that no decoder is needed. */
class MadeSounds extends SoundFiles {
  override clip(path: string): Float32Array {
    const random = new Random(path.length);
    return Float32Array.from({ length: CLIP_RATE_HZ / 4 }, () => random.next() - 0.5);
  }
}

describe('recorded sounds', () => {
  it('that are missing are asked for by the name of the script that fetches them', () => {
    expect(() => new SoundFiles(join(folder, 'nowhere'))).toThrow(/no recordings of guitar.*fetchSounds/);
  });

  it('fall into two halves without a file in both, and without the spoken names of pictures', () => {
    const sounds = new SoundFiles(folder);
    for (const kind of CLIP_KINDS) {
      const [learn, tell] = [sounds.list(kind, 'learn'), sounds.list(kind, 'tell')];
      expect([learn.length, tell.length]).toEqual([1, 1]);
      expect(learn).not.toEqual(tell);
    }
    expect(sounds.list('animals', 'tell')[0]).toMatch(/dog\.ogg$/);
  });

  it('follow one another to unit rms, the same for the same seed', () => {
    const company = recordedCompany(new MadeSounds(folder), 'tell');
    const made = (seed: number) => company.taps(new Random(seed), 48_000, 44_100, 512);
    expect(rootMeanSquare(made(1))).toBeCloseTo(1, 3);
    expect(made(1)).toEqual(made(1));
    expect(made(1)).not.toEqual(made(2));
  });

  it('make a world of forks amid them, and of them alone', () => {
    const silent = { hush: (_: Random, length: number) => new Float32Array(length) };
    const world = recordedWorld(5, 2, GENERATED_VOICES, silent);
    const named = world.map(({ world: name, condition, seed }) => `${name} ${condition} ${seed}`);
    expect(named).toEqual([
      'recorded hush 5',
      'recorded hush 6',
      'recorded hush-alone 5',
      'recorded hush-alone 6',
    ]);
    expect(world[0].make().truth.passages.length).toBeGreaterThan(0);
    expect(world[2].make().truth.passages).toEqual([]);
    const [practised] = practisedWorld(5, 1, GENERATED_VOICES, silent);
    expect(practised.make().truth.passages.length).toBeGreaterThan(0);
  });
});

describe('a piece for sampled instruments', () => {
  // Standard MIDI Files 1.0, table of variable-length quantities (from memory).
  it.each([
    [0x00, [0x00]],
    [0x40, [0x40]],
    [0x7f, [0x7f]],
    [0x80, [0x81, 0x00]],
    [0x2000, [0xc0, 0x00]],
    [0x3fff, [0xff, 0x7f]],
    [0x4000, [0x81, 0x80, 0x00]],
    [0x0fffffff, [0xff, 0xff, 0xff, 0x7f]],
  ])('writes the time %d as the standard does', (value, bytes) => {
    expect(variableLength(value)).toEqual(bytes);
  });

  it('is a file of one track that says its length, its instrument, its tuning and its notes', () => {
    const note = { startS: 0, durationS: 1, pitch: 69, velocity: 100 };
    const bytes = midiFile({ program: 24, detuning: 0, notes: [note] });
    const track = [
      0, 0xc0, 24, 0, 0xe0, 0, 0x40, 0, 0x90, 69, 100, 0x87, 0x40, 0x80, 69, 0, 0, 0xff, 0x2f, 0,
    ];
    // 480 ticks a quarter note, which is half a second where no tempo is set; so a second is 960, 0x87 0x40.
    const head = [...Buffer.from('MThd'), 0, 0, 0, 6, 0, 0, 0, 1, 0x01, 0xe0];
    expect([...bytes]).toEqual([...head, ...Buffer.from('MTrk'), 0, 0, 0, track.length, ...track]);
  });
});

describe('interpolation between samples', () => {
  it('is exact on a parabola, as Catmull and Rom’s is', () => {
    const parabola = Float32Array.from({ length: 8 }, (_, i) => 3 - 2 * i + 0.5 * i * i);
    for (const at of [1, 1.25, 3.5, 4.875])
      expect(between(parabola, at)).toBeCloseTo(3 - 2 * at + 0.5 * at * at, 5);
  });
});
