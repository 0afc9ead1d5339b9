import { describe, expect, it } from 'vitest';
import { readFile } from '../../../src/intake/readFile.ts';
import { readPasted } from '../../../src/intake/readPasted.ts';
import { encodeWav } from '../../../src/capture/wav.ts';
import { experimentJson } from '../../../src/report/experimentJson.ts';
import { marksCsv } from '../../../src/report/marksCsv.ts';
import { exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';

const experiment = exampleExperiment([
  exampleMark('a', { lengthM: 0.158 }),
  exampleMark('b', { lengthM: 0.4925 }),
  exampleMark('c'),
]);

const read = (content: BlobPart, name = 'group-7.csv') => readFile(new File([content], name));
/** A file that claims a size; reading more than its head fails the test. */
function hugeFile(name: string, size: number, head: string): File {
  const file = new File([head], name);
  Object.defineProperty(file, 'size', { value: size });
  Object.defineProperty(file, 'arrayBuffer', { value: () => Promise.reject(new Error('it was read')) });
  return file;
}

describe('readFile', () => {
  it('tells an experiment, a table and a recording apart by what is in them', async () => {
    expect((await read(experimentJson(experiment), 'x.txt')).content).toEqual({
      kind: 'experiment',
      experiment,
    });
    expect((await read(marksCsv(experiment), 'x')).content?.kind).toBe('table');
    const wav = encodeWav([new Float32Array(800)], 8000);
    expect((await read(wav, 'x')).content?.kind).toBe('recording');
  });

  it('gives the good rows of a table, and each fault with its row and column', async () => {
    const intake = await read('fork_hz;ends;length_cm\n512;closed;15,8\n512;closed;abc\n512;open;31,8');
    expect(intake.content?.kind === 'table' && intake.content.rows.map(({ row }) => row)).toEqual([2, 4]);
    expect(intake.faults).toEqual([
      { row: 3, column: 'length_cm', message: '“abc” is not a number. Write the length in digits.' },
    ]);
  });

  it('gives an experiment without its faulty marks, and without the marks of a faulty fork', async () => {
    const fork = experiment.forks[0];
    const broken = {
      ...experiment,
      forks: [fork, { ...fork, id: 'fork-2', nominalHz: 'A' }],
      marks: [
        experiment.marks[0],
        { ...experiment.marks[1], ends: 'half' },
        { ...experiment.marks[2], forkId: 'fork-2' },
      ],
    };
    const intake = await read(JSON.stringify(broken), 'x.json');
    expect(intake.content?.kind === 'experiment' && intake.content.experiment.marks).toEqual([
      experiment.marks[0],
    ]);
    expect(intake.faults.map(({ column }) => column)).toEqual(['forks[1].nominalHz', 'marks[1].ends']);
  });

  it('takes nothing where something else is wrong, or no mark is left', async () => {
    expect((await read(JSON.stringify({ ...experiment, rule: 7 }), 'x.json')).content).toBeNull();
    const marks = [{ ...experiment.marks[0], ends: 'half' }];
    expect((await read(JSON.stringify({ ...experiment, marks }), 'x.json')).content).toBeNull();
  });

  it.each([
    ['', 'empty'],
    ['PK\u0003\u0004zip', 'Save it as CSV'],
    ['%PDF-1.7', 'PDF'],
    ['{"schemaVersion": 2, "id', 'isn’t whole JSON'],
    ['[1, 2]', 'isn’t an experiment'],
    ['hello', 'none of the columns'],
    ['RIFF\u0004\u0000\u0000\u0000WAVE', 'ends before its sound begins'],
  ])('refuses %j and says: %s', async (content, reason) => {
    const intake = await read(content, 'x');
    expect(intake.content).toBeNull();
    expect(intake.faults.map(({ message }) => message).join(' ')).toContain(reason);
  });

  it('refuses absurd sizes before reading them', async () => {
    for (const [name, head] of [
      ['bomb.json', '{'],
      ['bomb.csv', 'fork_hz'],
    ] as const) {
      const intake = await readFile(hugeFile(name, 4e9, head));
      expect(intake.faults[0]?.message).toMatch(/has 4000 MB; .* at most/);
    }
  });

  it('refuses a tower of brackets without walking it', async () => {
    const tower = `{"schemaVersion":2,"title":${'['.repeat(1_000_000)}${']'.repeat(1_000_000)}}`;
    expect((await read(tower, 'x.json')).faults[0]?.message).toContain('nested far deeper');
  });

  it('reads results that groups state', async () => {
    const intake = await read(
      'group;speed_mps;expanded_uncertainty_mps;temperature_c\nA;343,2;2,4;20,5\nB;3432;1;',
    );
    expect(intake.content).toEqual({
      kind: 'results',
      results: [{ group: 'A', speedMps: 343.2, standardUncertaintyMps: 1.2, temperatureC: 20.5 }],
    });
    expect(intake.faults).toEqual([
      {
        row: 3,
        column: 'speed_mps',
        message: 'must be 100 to 1500 m/s, not 3432. Check the number and its unit.',
      },
    ]);
  });

  it('reads old spreadsheets’ text codings', async () => {
    const heading = 'fork_hz;ends;length_cm;place';
    const latin = new Uint8Array(
      [...`${heading}\n512;closed;15,8;K`].map((c) => c.charCodeAt(0)).concat(0xfc, 0x63),
    );
    const wide = new Uint8Array([
      0xff,
      0xfe,
      ...[...`${heading}\n512;closed;15,8;Küc`].flatMap((c) => [c.charCodeAt(0), 0]),
    ]);
    for (const bytes of [latin, wide]) {
      const { content } = await read(bytes);
      expect(content?.kind === 'table' && content.rows[0]?.place).toBe('Küc');
    }
  });
});

describe('readPasted', () => {
  it('fills in fork and ends of the bench', () => {
    const { content } = readPasted('15,8\n49,3\n', { forkHz: 480, ends: 'closed' });
    expect(content?.kind === 'table' && content.rows).toMatchObject([
      { row: 1, forkHz: 480, ends: 'closed', lengthM: 0.158 },
      { row: 2, forkHz: 480, ends: 'closed', lengthM: 0.493 },
    ]);
  });
});
