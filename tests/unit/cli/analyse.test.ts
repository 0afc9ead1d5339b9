import { execFile, spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { encodeWav } from '../../../src/capture/wav.ts';
import { writeWav } from '../../bench/detector/wav.ts';
import { simulate } from '../../bench/detector/simulate.ts';
import { commandWords } from '../../support/commandWords.ts';
import { addStrikes, toneInNoise } from '../../support/tones.ts';

interface Result {
  readonly status: number;
  readonly out: string;
  readonly err: string;
}

/** Runs the command as a user would, without npm's own start-up. */
function analyse(...words: string[]): Promise<Result> {
  return new Promise((resolve) => {
    execFile(process.execPath, [...commandWords('analyse'), ...words], (error, out, err) => {
      resolve({ status: error === null ? 0 : Number(error.code), out, err });
    });
  });
}

const alone = new Map<string, Promise<Result>>();

/** The answer for one file by itself, asked for once however many tests look at it. */
function analyseAlone(file: string): Promise<Result> {
  const answer = alone.get(file) ?? analyse('--fork', '512', '--json', file);
  alone.set(file, answer);
  return answer;
}

const lines = (text: string): Record<string, unknown>[] =>
  text
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as Record<string, unknown>);

describe('analyse', { timeout: 60_000 }, () => {
  let folder = '';
  const at = (name: string): string => join(folder, name);

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'analyse-'));
    const slide = simulate(
      { condition: 'quiet', durationS: 14, clean: true, nominalHz: 512, sampleRateHz: 44_100 },
      3,
    );
    writeFileSync(at('slide.wav'), writeWav(slide.samples, slide.sampleRateHz));
    const check = simulate({ condition: 'check-resonant', durationS: 14, clean: true, nominalHz: 512 }, 2);
    writeFileSync(at('check.wav'), writeWav(check.samples, check.sampleRateHz));
    const small = toneInNoise(
      { sampleRateHz: 8000, durationS: 4, frequencyHz: 512, amplitude: 0, noiseRms: 0.001 },
      1,
    );
    addStrikes(small, 8000, 512.3, [{ strikeS: 1, amplitude: 0.1, decayTimeS: 8, dampedS: 3.5 }]);
    writeFileSync(at('small.wav'), writeWav(small, 8000));
    writeFileSync(at('quiet.wav'), writeWav(new Float32Array(16_000), 8000));
    writeFileSync(at('text.wav'), 'This is no sound.');
    writeFileSync(at('empty.wav'), '');
  });

  afterAll(() => rmSync(folder, { recursive: true }));

  it('says of a file whose end is missing, or one of whose channels is dead, that what is there is used', async () => {
    const whole = new Uint8Array(readFileSync(at('small.wav')));
    writeFileSync(at('cut.wav'), whole.subarray(0, whole.length / 2));
    const samples = toneInNoise(
      { sampleRateHz: 8000, durationS: 2, frequencyHz: 512, amplitude: 0.1, noiseRms: 0.001 },
      2,
    );
    writeFileSync(at('dead.wav'), encodeWav([new Float32Array(samples.length), samples], 8000));
    const { status, out } = await analyse('--fork', '512', '--json', at('cut.wav'), at('dead.wav'));
    expect(status).toBe(0);
    const [cut, dead] = lines(out).map(({ warnings }) => warnings as { code: string; message: string }[]);
    expect(cut?.find(({ code }) => code === 'cut-off')?.message).toMatch(/end of this file is missing/);
    expect(dead?.find(({ code }) => code === 'one-channel')?.message).toMatch(/Channel 2 of 2 is used/);
  });

  it.each([
    [['--fork', '-512'], '--fork needs a value, and none below zero'],
    [['--frok', '512'], '--frok is no option of this command'],
    [['--json=yes', '--fork', '512'], '--json takes no value'],
    [['--fork', '512', '--ends', 'shut'], '--ends shut is neither closed nor open'],
    [['--fork', '512', '--diameter', '1'], '--diameter 1 is not a width from 2 to 500 mm'],
    [
      ['--fork', '4096', '--ends', 'closed', '--diameter', '500'],
      '--diameter 500 mm is no tube that resonates clearly at 4096 Hz',
    ],
  ])('names the fault of %j in its own words', async (words, fault) => {
    const { status, err } = await analyse(...words, at('small.wav'));
    expect(status).toBe(1);
    expect(err.split('\n')[0]).toBe(fault);
  });

  it('follows the column ten times a second after a pass, in metres where the tube is given', async () => {
    const known = ['--ends', 'closed', '--diameter', '35'];
    const [withTube, without] = await Promise.all(
      [known, []].map(async (tube) => {
        const { out, err } = await analyse('--fork', '512', '--follow', ...tube, '--json', at('slide.wav'));
        expect(err).toBe('');
        const [line] = lines(out);
        expect(Object.keys(line ?? {}).slice(-2)).toEqual(['following', 'warnings']);
        return line?.['following'] as Record<string, number | null>[];
      }),
    );
    expect(withTube.length).toBeGreaterThan(5);
    for (const places of [withTube, without]) {
      const timesS = places.map(({ timeS }) => timeS ?? NaN);
      const gapsS = timesS.slice(1).map((timeS, index) => timeS - timesS[index]);
      // A new pass begins a new count, so that one may be missing there.
      expect(Math.max(...gapsS)).toBeLessThan(0.21);
      expect(Math.min(...gapsS)).toBeGreaterThan(0.04);
      expect(gapsS.filter((gapS) => Math.abs(gapS - 0.1) < 0.005).length).toBeGreaterThan(0.9 * gapsS.length);
    }
    for (const place of withTube) {
      expect(Object.keys(place)).toEqual(['timeS', 'halfWidths', 'distanceM', 'standardUncertaintyM']);
      expect(place['distanceM'] === null).toBe(place['halfWidths'] === null);
    }
    expect(withTube.some(({ distanceM }) => distanceM !== null)).toBe(true);
    expect(without.every(({ distanceM }) => distanceM === null)).toBe(true);
  });

  it('gives a line of JSON a file with the keys of the contract', async () => {
    const [slide, quiet] = (
      await Promise.all(['slide.wav', 'quiet.wav'].map((name) => analyseAlone(at(name))))
    ).map(({ status, out, err }) => {
      expect(err).toBe('');
      expect(status).toBe(0);
      expect(lines(out)).toHaveLength(1);
      return lines(out)[0];
    });
    expect(Object.keys(slide ?? {})).toEqual([
      'file',
      'durationS',
      'sampleRateHz',
      'fork',
      'soundings',
      'resonances',
      'check',
      'warnings',
    ]);
    expect(slide).toMatchObject({ file: at('slide.wav'), sampleRateHz: 44_100, check: null });
    expect(slide?.['durationS']).toBeCloseTo(14, 3);
    expect(slide?.['fork']).toEqual({
      nominalHz: 512,
      measuredHz: expect.closeTo(512, -0.5) as number,
      standardUncertaintyHz: expect.any(Number) as number,
    });
    const soundings = slide?.['soundings'] as Record<string, unknown>[];
    expect(soundings.length).toBeGreaterThan(0);
    for (const sounding of soundings) {
      expect(Object.keys(sounding)).toEqual(['startS', 'endS', 'decayTimeS']);
    }
    const resonances = slide?.['resonances'] as Record<string, unknown>[];
    expect(resonances.length).toBeGreaterThan(0);
    for (const resonance of resonances) {
      expect(resonance).toMatchObject({
        timeS: expect.any(Number) as number,
        riseDb: expect.any(Number) as number,
        confidence: expect.any(Number) as number,
        certainty: expect.stringMatching(/^(sure|maybe)$/) as string,
      });
      expect(resonance).not.toHaveProperty('flaggedAtS');
    }
    // Nothing was heard: null, not 0 or a missing key.
    expect(quiet).toMatchObject({
      fork: { nominalHz: 512, measuredHz: null, standardUncertaintyHz: null },
      soundings: [],
      resonances: [],
      warnings: [
        { code: 'silent', message: expect.any(String) as string },
        { code: 'no-fork-heard', message: expect.any(String) as string },
      ],
    });
  });

  it('adds the moment of flagging with --live, and the verdict with --check', async () => {
    const live = lines((await analyse('--fork=512', '--live', '--json', at('slide.wav'))).out)[0];
    const resonances = live?.['resonances'] as { timeS: number; flaggedAtS: number }[];
    expect(resonances.length).toBeGreaterThan(0);
    for (const { timeS, flaggedAtS } of resonances) expect(flaggedAtS).toBeGreaterThan(timeS);

    const check = lines((await analyse('--fork=512', '--check', '--json', at('check.wav'))).out)[0];
    expect(check?.['check']).toEqual({
      verdict: 'resonant',
      riseDb: expect.any(Number) as number,
      standardUncertaintyDb: expect.any(Number) as number,
      comparisons: expect.any(Number) as number,
    });
  });

  it('gives an error line for each broken file, goes on to the next, and ends with status 1', async () => {
    const broken = [at('text.wav'), at('empty.wav'), at('none.wav'), folder];
    const { status, out, err } = await analyse('--fork', '512', '--json', ...broken, at('small.wav'));
    expect(status).toBe(1);
    const all = lines(out);
    expect(all).toHaveLength(5);
    broken.forEach((file, i) => {
      expect(all[i]).toEqual({ file, error: expect.stringMatching(/\w+ .+\w+/) as string });
      expect(err).toContain(`${file}: ${String(all[i]?.['error'])}`);
    });
    expect(all[2]?.['error']).toMatch(/no such file/);
    expect(all[3]?.['error']).toMatch(/folder/);
    expect(all[4]).toMatchObject({ file: at('small.wav'), durationS: 4 });
  });

  it('answers for many files, on all cores, just as for one by one and in the order given', async () => {
    const files = ['slide.wav', 'text.wav', 'quiet.wav', 'small.wav', 'slide.wav'].map(at);
    const together = await analyse('--fork', '512', '--json', ...files);
    const apart: string[] = [];
    for (const file of files) apart.push((await analyseAlone(file)).out);
    expect(together.out).toBe(apart.join(''));
    expect(together.status).toBe(1);
    expect(together.err).toMatch(/text\.wav: /);
  });

  it('says so where a fork doesn’t fit the sample rate', async () => {
    const { status, out, err } = await analyse(
      '--fork',
      '2000',
      '--tolerance',
      '5',
      '--json',
      at('small.wav'),
    );
    expect(status).toBe(0);
    expect(err).toBe('');
    expect(lines(out)[0]).toMatchObject({ fork: { measuredHz: null } });
    const low = at('low.wav');
    writeFileSync(low, writeWav(new Float32Array(4000), 4000));
    const refused = await analyse('--fork', '2000', '--json', low);
    expect(refused.status).toBe(1);
    expect(lines(refused.out)[0]?.['error']).toMatch(/sample ?rate/i);
  });

  it('prints a table for people without --json', async () => {
    const { status, out } = await analyse('--fork', '512', at('small.wav'), at('text.wav'));
    expect(status).toBe(1);
    expect(out).toMatch(/small\.wav {2}4\.0 s at 8000 Hz/);
    expect(out).toMatch(/measured 512\.3\d\d ± 0\.\d+ Hz/);
    expect(out).toMatch(/sounding {3}1\.\d+ s to 3\.\d+ s/);
    expect(out).toMatch(/text\.wav\n {2}can’t be used/);
  });

  it.each([
    [[], /--fork is missing/],
    [['--fork', 'abc', 'a.wav'], /--fork abc is not a pitch/],
    [['--fork', '20', 'a.wav'], /64 to 4096/],
    [['--fork', '512', '--tolerance', '0', 'a.wav'], /--tolerance 0 is not a width/],
    [['--fork', '512'], /no file given/],
    [['--fork', '512', '--loud', 'a.wav'], /--loud/],
  ])('refuses %j with a message and its usage', async (words, message) => {
    const { status, out, err } = await analyse(...words);
    expect(status).toBe(1);
    expect(out).toBe('');
    expect(err).toMatch(message);
    expect(err).toMatch(/usage: npm run --silent analyse/);
  });

  it('takes a decimal comma in a pitch, and explains itself with --help', async () => {
    const comma = await analyse('--fork', '426,6', '--json', at('quiet.wav'));
    expect(lines(comma.out)[0]).toMatchObject({ fork: { nominalHz: 426.6 } });
    const help = await analyse('--help');
    expect(help.status).toBe(0);
    expect(help.out).toMatch(/--check/);
  });

  it('works on as many files at a time as it is told, with the same answers, and refuses nonsense', async () => {
    const files = [at('small.wav'), at('quiet.wav')];
    const apart = (await Promise.all(files.map(analyseAlone))).map(({ out }) => out).join('');
    for (const threads of ['1', '2']) {
      const { out } = await analyse('--fork', '512', '--json', '--threads', threads, ...files);
      expect(out).toBe(apart);
    }
    const none = await analyse('--fork', '512', '--threads', '0', at('small.wav'));
    expect(none.status).toBe(1);
    expect(none.err).toContain('--threads 0 is not a whole number from 1 to 256');
  });

  it('stops without a fault when nobody reads on', async () => {
    const files = Array.from({ length: 6 }, () => at('small.wav'));
    const words = [...commandWords('analyse'), '--fork', '512', '--json', ...files];
    const child = spawn(process.execPath, words, { stdio: ['ignore', 'pipe', 'pipe'] });
    let err = '';
    child.stderr.on('data', (data: Buffer) => (err += data.toString()));
    child.stdout.destroy();
    const status = await new Promise((resolve) => child.on('exit', resolve));
    expect(err).toBe('');
    expect(status).toBe(0);
  });
});
