import { describe, expect, it } from 'vitest';
import { PracticeColumn } from '../../../src/capture/practice/practiceColumn.ts';
import { Reverberation } from '../../../src/capture/practice/reverberation.ts';
import { RoomScene } from '../../../src/capture/practice/roomScene.ts';
import { SeededRandom } from '../../../src/capture/practice/seededRandom.ts';
import { LONG_TERM_SPEECH, thirdOctavesDb } from '../../support/thirdOctaves.ts';
import { db, levelDb, phasor } from './measure.ts';

const RATE_HZ = 48_000;

describe('the room of the practice column', { timeout: 30_000 }, () => {
  // As RoomScene states: 0 dB is a sine of amplitude 1. Talk comes and goes, so 20 s hold it to about 2 dB.
  it.each([
    ['quiet', -61, 2],
    ['talk', -34, 3],
    ['full class', -27, 3],
  ] as const)('is as loud as it says: %s', (noise, expectedDb, toleranceDb) => {
    const level = levelDb(new PracticeColumn({ noise }, 3).render(20 * RATE_HZ));
    expect(Math.abs(level - expectedDb)).toBeLessThan(toleranceDb);
  });

  it('talks with the long-term spectrum of real talk', () => {
    // Third octaves at 70 dB overall, Byrne et al. 1994, doi 10.1121/1.410152. Real talkers differ by some dB, so
    // do these six voices: 5 dB in a band, 2.5 dB on average.
    const expected = LONG_TERM_SPEECH.filter(([hz]) => hz >= 250 && hz <= 1000);
    const random = new SeededRandom(5);
    const scene = new RoomScene(random, RATE_HZ, 'full class', 512);
    const sound = Float32Array.from({ length: 30 * RATE_HZ }, (_, i) => {
      if (i % 48 === 0) scene.step(0.001);
      return scene.next();
    });
    const bands = thirdOctavesDb(
      [sound],
      RATE_HZ,
      expected.map(([hz]) => hz),
    );
    const off = expected.map(([, level], i) => (bands[i] ?? NaN) - level);
    for (const each of off) expect(Math.abs(each)).toBeLessThan(5);
    expect(off.reduce((sum, each) => sum + Math.abs(each), 0) / off.length).toBeLessThan(2.5);
  });

  it('moves: the level at a fork’s pitch swings by tens of decibels while people talk', () => {
    const column = new PracticeColumn({ noise: 'talk' }, 8);
    const frames = RATE_HZ / 8;
    const levels = Array.from({ length: 160 }, () =>
      db(phasor(column.render(frames), 0, frames, 512, RATE_HZ).size),
    ).sort((one, other) => one - other);
    const meanDb =
      10 * Math.log10(levels.reduce((sum, level) => sum + 10 ** (level / 10), 0) / levels.length);
    // Steady Gaussian noise alone would swing by 13 dB between these shares (its power is exponentially distributed).
    expect((levels[144] ?? 0) - (levels[16] ?? 0)).toBeGreaterThan(18);
    // Short-term peaks lie about 10 dB above the long-term level: Byrne et al. 1994.
    const peakDb = (levels[158] ?? 0) - meanDb;
    expect(peakDb).toBeGreaterThan(5);
    expect(peakDb).toBeLessThan(14);
  });

  it('echoes for 0.4 s', () => {
    // Occupied classrooms: 0.41 s, Sato & Bradley 2008, doi 10.1121/1.2839283. Level at 0.2 s: 30 dB down.
    const room = new Reverberation(0.4, RATE_HZ);
    const random = new SeededRandom(2);
    for (let i = 0; i < RATE_HZ; i += 1) room.next(random.normal());
    const tail = Float32Array.from({ length: 0.25 * RATE_HZ }, () => room.next(0));
    const early = levelDb(tail.subarray(0, 0.02 * RATE_HZ));
    const late = levelDb(tail.subarray(0.2 * RATE_HZ, 0.22 * RATE_HZ));
    expect(Math.abs(early - late - 30)).toBeLessThan(3);
  });
});
