import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { WavError, WavReader } from '../../../src/capture/wav.ts';
import { readFile } from '../../../src/intake/readFile.ts';
import { readPasted } from '../../../src/intake/readPasted.ts';
import { experimentFromRows, takeRows } from '../../../src/intake/takeRows.ts';
import type { Intake } from '../../../src/intake/intakeTypes.ts';
import { readExperiment } from '../../../src/notebook/readExperiment.ts';
import { experimentJson } from '../../../src/report/experimentJson.ts';
import { marksCsv } from '../../../src/report/marksCsv.ts';
import { anyExperiment } from '../../support/anyExperiment.ts';
import { cpuMs } from '../../support/cpuMs.ts';
import { exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';
import { wavBytes } from '../capture/wavBytes.ts';

/** No case may take longer, ms. */
const LONGEST_MS = 1000;
const there = exampleExperiment([exampleMark('a', { lengthM: 0.158 }), exampleMark('b')]);
const thereBefore = JSON.stringify(there);
let slowestMs = 0;
let cases = 0;

function outside() {
  let count = 0;
  return { newId: () => `new-${(count += 1)}`, now: '2031-01-01T00:00:00.000Z' };
}

/** A result or a message that says something, in time, and what was there is as it was. */
async function expectSound(read: () => Intake | Promise<Intake>): Promise<Intake> {
  const start = cpuMs();
  const intake = await read();
  const { content, faults } = intake;
  if (content === null) expect(faults.length).toBeGreaterThan(0);
  for (const { message } of faults) expect(message.length).toBeGreaterThan(10);
  if (content?.kind === 'table') {
    // What is taken must be an experiment that opens again.
    for (const taken of [
      takeRows(there, content.rows, outside()),
      experimentFromRows('x', content.rows, outside()),
    ]) {
      expect(readExperiment(JSON.parse(experimentJson(taken.experiment)))).toMatchObject({
        kind: 'experiment',
      });
    }
  }
  if (content?.kind === 'experiment') {
    expect(readExperiment(JSON.parse(experimentJson(content.experiment))).kind).toBe('experiment');
  }
  const tookMs = cpuMs() - start;
  slowestMs = Math.max(slowestMs, tookMs);
  cases += 1;
  expect(tookMs).toBeLessThan(LONGEST_MS);
  expect(JSON.stringify(there)).toBe(thereBefore);
  return intake;
}

/** Text with a few characters gone, doubled or put in. */
const damage = fc.array(
  fc.record({
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    gone: fc.integer({ min: 0, max: 12 }),
    put: fc.oneof(
      fc.constantFrom(
        '"',
        ',',
        ';',
        '\t',
        '\n',
        '{',
        '}',
        '[',
        ']',
        'null',
        '-',
        '1e999',
        '__proto__',
        '\u0000',
        '=',
        ':',
      ),
      fc.string({ maxLength: 6 }),
    ),
  }),
  { maxLength: 3 },
);
function damaged(text: string, places: readonly { at: number; gone: number; put: string }[]): string {
  return places.reduce((left, { at, gone, put }) => {
    const from = Math.floor(at * left.length);
    return left.slice(0, from) + put + left.slice(from + gone);
  }, text);
}
const file = (content: BlobPart, name: string): File => new File([content], name);

describe('whatever is dropped: a result or a message, in time, and nothing there is touched', () => {
  it('4000 JSON files: any value, and damaged experiments', { timeout: 240_000 }, async () => {
    const text = fc.oneof(
      fc.json(),
      fc
        .tuple(anyExperiment, damage)
        .map(([experiment, places]) => damaged(experimentJson(experiment), places)),
      fc.tuple(anyExperiment, fc.jsonValue(), fc.nat()).map(([experiment, value, pick]) => {
        const keys = Object.keys(experiment);
        return JSON.stringify({ ...experiment, [keys[pick % keys.length] ?? '']: value });
      }),
    );
    let good = 0;
    await fc.assert(
      fc.asyncProperty(text, async (json) => {
        if ((await expectSound(() => readFile(file(json, 'x.json')))).content !== null) good += 1;
      }),
      { numRuns: 4000 },
    );
    expect(good).toBeGreaterThan(50);
  });

  it('4000 tables: any text, any cells, and damaged tables', { timeout: 240_000 }, async () => {
    const cell = fc.oneof(
      fc.constantFrom(
        '512',
        'closed',
        'open',
        '15,8',
        '15.8',
        '"',
        '=1+1',
        '',
        'yes',
        '20',
        '-',
        '1e9',
        '#',
        '0',
      ),
      fc.string({ maxLength: 8 }),
    );
    const heading = fc.subarray(
      [
        'fork_hz',
        'ends',
        'length_cm',
        'place',
        'order',
        'excluded',
        'note',
        'diameter_mm',
        'temperature_c',
        'group',
        'speed_mps',
        'standard_uncertainty_mps',
      ],
      { minLength: 1 },
    );
    const text = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 200 }),
      fc
        .tuple(
          heading,
          fc.array(fc.array(cell, { maxLength: 10 }), { maxLength: 8 }),
          fc.constantFrom(',', ';', '\t'),
        )
        .map(([names, rows, delimiter]) => [names, ...rows].map((row) => row.join(delimiter)).join('\n')),
      fc.tuple(anyExperiment, damage).map(([experiment, places]) => damaged(marksCsv(experiment), places)),
    );
    let good = 0;
    await fc.assert(
      fc.asyncProperty(text, async (table) => {
        if ((await expectSound(() => readFile(file(table, 'x.csv')))).content !== null) good += 1;
        await expectSound(() => readPasted(table, { forkHz: 512, ends: 'closed' }));
      }),
      { numRuns: 4000 },
    );
    expect(good).toBeGreaterThan(80);
  });

  it('4000 WAV headers: any bytes behind RIFF, and damaged recordings', { timeout: 240_000 }, async () => {
    const whole = wavBytes({ data: Array.from({ length: 400 }, (_, i) => (i * 37) % 256) });
    const damagedWav = fc
      .array(fc.tuple(fc.nat({ max: 60 }), fc.nat({ max: 255 })), { minLength: 1, maxLength: 8 })
      .chain((changes) =>
        fc.nat({ max: whole.length }).map((keep) => {
          const bytes = whole.slice();
          for (const [at, byte] of changes) bytes[at] = byte;
          return bytes.slice(0, Math.max(keep, 12));
        }),
      );
    const anyBehind = fc.uint8Array({ maxLength: 120 }).map((bytes) => {
      const begins = [...'RIFF'].map((character) => character.charCodeAt(0));
      return new Uint8Array([...begins, ...bytes]);
    });
    const bytes = fc.oneof(damagedWav, anyBehind, fc.uint8Array({ maxLength: 60 }));
    let good = 0;
    await fc.assert(
      fc.asyncProperty(bytes, async (raw) => {
        const wav = new Uint8Array(raw);
        const intake = await expectSound(() => readFile(file(wav, 'x.wav')));
        if (intake.content !== null) good += 1;
        // What is let through is opened later: then, too, it is sound or a message.
        const start = cpuMs();
        try {
          const reader = await WavReader.open(
            (offset, length) => Promise.resolve(wav.subarray(offset, offset + length)),
            wav.length,
          );
          for await (const block of reader.blocks(4096))
            expect(block.samples.every(Number.isFinite)).toBe(true);
        } catch (error) {
          expect(error).toBeInstanceOf(WavError);
        }
        expect(cpuMs() - start).toBeLessThan(LONGEST_MS);
      }),
      { numRuns: 4000 },
    );
    expect(good).toBeGreaterThan(200);
  });

  it('has looked at more than ten thousand of them', () => {
    expect(cases).toBeGreaterThan(10_000);
    console.log(`${cases} cases, the slowest took ${slowestMs.toFixed(0)} ms`);
  });
});
