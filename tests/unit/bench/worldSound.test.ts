import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { COMPANY } from '../../bench/detector/companySounds.ts';
import type { CompanyName } from '../../bench/detector/companySounds.ts';
import { rootMeanSquare } from '../../bench/detector/noises.ts';
import { throughPhone } from '../../bench/detector/phone.ts';
import { Random } from '../../bench/detector/random.ts';
import { variedWorld } from '../../bench/detector/variedWorld.ts';
import { GENERATED_VOICES } from '../../bench/detector/voices/voices.ts';
import { writeWav } from '../../bench/detector/wav.ts';
import { folderWorld } from '../../bench/detector/worldSound.ts';

const folder = mkdtempSync(join(tmpdir(), 'world-'));
afterAll(() => rmSync(folder, { recursive: true }));

describe('recordings of another simulator', () => {
  it('are read with their truth, crossings nearer than 0.4 s to each other as one', () => {
    writeFileSync(join(folder, '300001.wav'), writeWav(new Float32Array(4800), 48_000));
    const crossings = [
      { timeS: 3, riseDb: 9, care: true },
      { timeS: 3.3, riseDb: 12, care: false },
      { timeS: 7, riseDb: 2, care: false },
    ];
    writeFileSync(join(folder, '300001.json'), JSON.stringify({ nominalHz: 512, kind: 'plain', crossings }));
    const [entry, ...others] = folderWorld(folder);
    expect(others).toEqual([]);
    const { truth, samples, sampleRateHz } = entry.make();
    expect([samples.length, sampleRateHz]).toEqual([4800, 48_000]);
    expect(truth).toMatchObject({ condition: 'plain', seed: 300001, nominalHz: 512, durationS: 0.1 });
    expect(truth.passages).toMatchObject([
      { timeS: 3.15, fromS: 3, toS: 3.3, riseDb: 12, audible: true },
      { timeS: 7, audible: false },
    ]);
  });
});

describe('the varied world', () => {
  it('is the same for the same seed, and holds no passage where no fork sounds', () => {
    const make = () =>
      variedWorld(3, 1, GENERATED_VOICES)
        .find(({ condition }) => condition === 'taps-alone')
        ?.make();
    const [first, again] = [make(), make()];
    expect(first?.samples.slice(100_000, 110_000)).toEqual(again?.samples.slice(100_000, 110_000));
    expect(first?.truth.passages).toEqual([]);
  });

  it.each(Object.keys(COMPANY) as CompanyName[])('%s has unit rms and differs with the seed', (name) => {
    const made = (seed: number) => COMPANY[name](new Random(seed), 96_000, 48_000, 512);
    expect(rootMeanSquare(made(1))).toBeCloseTo(1, 3);
    expect(made(1)).not.toEqual(made(2));
  });

  it('has phones that leave a tone in place and nearly as loud', () => {
    const tone = Float32Array.from(
      { length: 48_000 },
      (_, i) => 0.1 * Math.sin((2 * Math.PI * 512 * i) / 48_000),
    );
    for (const seed of [0, 1, 2, 3]) {
      const heard = throughPhone(new Random(seed), tone, 48_000);
      let [product, power, own] = [0, 0, 0];
      for (let i = 5000; i < 43_000; i += 1) {
        product += tone[i] * heard[i];
        power += heard[i] ** 2;
        own += tone[i] ** 2;
      }
      // Filters turn the phase a little and the coder adds noise; a late or torn tone would correlate far less.
      expect(product / Math.sqrt(power * own)).toBeGreaterThan(0.9);
    }
  });
});
