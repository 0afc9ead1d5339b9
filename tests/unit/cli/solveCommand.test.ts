import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { solveTable } from '../../../src/cli/solveTable.ts';
import { READ_COLUMNS, REQUIRED_COLUMNS } from '../../../src/marks/markColumns.ts';

const PROJECT = resolve(import.meta.dirname, '../../..');
const KEYS = [
  'file',
  'speedMps',
  'standardUncertaintyMps',
  'expandedUncertaintyMps',
  'coverageFactor',
  'endCorrectionM',
  'endCorrectionStandardUncertaintyM',
  'theory',
  'marks',
  'warnings',
];
const GOOD =
  'fork_hz,ends,length_cm,diameter_mm,temperature_c\n512,closed,15.8,30,20\n512,closed,49.2,30,20\n';

let folder = '';

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'solve-'));
  await writeFile(join(folder, 'good.csv'), GOOD);
  await writeFile(join(folder, 'bad.csv'), 'fork_hz,ends,length_cm\n512,closed,15.8\n512,closed,abc\n');
});
afterAll(() => rm(folder, { recursive: true }));

interface Ended {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs the command as npm does: in the project's folder, told where the user stands. */
function run(words: readonly string[]): Promise<Ended> {
  return new Promise((done) => {
    execFile(
      process.execPath,
      ['--import', 'tsx/esm', 'src/cli/solve.ts', ...words],
      { cwd: PROJECT, env: { ...process.env, INIT_CWD: folder } },
      (error, stdout, stderr) => done({ code: error === null ? 0 : Number(error.code), stdout, stderr }),
    );
  });
}

describe('the solve command', () => {
  it('reads UTF-16 of either byte order, as the page does', { timeout: 60_000 }, async () => {
    const little = Buffer.from(`\ufeff${GOOD}`, 'utf16le');
    await writeFile(join(folder, 'le.csv'), little);
    await writeFile(join(folder, 'be.csv'), Buffer.from(little).swap16());
    const { code, stdout } = await run(['--json', 'good.csv', 'le.csv', 'be.csv']);
    expect(code).toBe(0);
    const speeds = stdout
      .trimEnd()
      .split('\n')
      .map((line) => (JSON.parse(line) as { speedMps: number }).speedMps);
    expect(speeds).toHaveLength(3);
    expect(new Set(speeds).size).toBe(1);
  });

  it(
    '--help names every column that is read, with those that are required',
    { timeout: 60_000 },
    async () => {
      const { code, stdout } = await run(['--help']);
      expect(code).toBe(0);
      for (const column of READ_COLUMNS) expect(stdout).toMatch(new RegExp(`^  ${column} `, 'm'));
      const required = [...stdout.matchAll(/^ {2}(\S+) +required/gm)].map(([, name]) => name);
      expect(required).toEqual(REQUIRED_COLUMNS);
    },
  );

  it(
    'prints one line of JSON per file with the agreed keys, and goes on after a bad file',
    { timeout: 60_000 },
    async () => {
      const { code, stdout, stderr } = await run(['--json', 'good.csv', 'bad.csv', 'missing.csv', folder]);
      const lines = stdout
        .trimEnd()
        .split('\n')
        .map((line) => JSON.parse(line) as Record<string, unknown>);
      expect(lines.map(({ file }) => file)).toEqual(['good.csv', 'bad.csv', 'missing.csv', folder]);
      expect(Object.keys(lines[0] ?? {})).toEqual(expect.arrayContaining(KEYS));
      expect(lines[0]?.['marks']).toMatchObject([
        { row: 2, order: 1, outlier: false },
        { row: 3, order: 2, outlier: false },
      ]);
      for (const line of lines.slice(1)) expect(Object.keys(line)).toEqual(['file', 'error']);
      expect(lines[1]?.['error']).toContain('row 3, column length_cm');
      expect(stderr).toContain('bad.csv: row 3, column length_cm: “abc” is not a number');
      expect(stderr).toContain('missing.csv: there is no such file');
      expect(stderr).not.toMatch(/\n\s+at /);
      expect(code).toBe(1);
    },
  );

  it(
    'prints a table for a person without --json, and tells its use without a file',
    { timeout: 60_000 },
    async () => {
      const table = await run(['good.csv']);
      expect(table.code).toBe(0);
      expect(table.stdout).toMatch(/speed of sound in free air\s+34\d\.\d\d m\/s ± /);
      const nothing = await run([]);
      expect(nothing.code).toBe(1);
      expect(nothing.stderr).toContain('usage:');
    },
  );
});

describe('several places in one table', () => {
  const rows = (place: string, temperatureC: number, lengthsCm: readonly number[]): string[] =>
    lengthsCm.map((lengthCm) => `512,closed,${lengthCm},30,${temperatureC},${place}`);
  const table = ['fork_hz,ends,length_cm,diameter_mm,temperature_c,place']
    .concat(rows('hall', 20, [15.79, 49.22]), rows('yard', 5, [15.35, 47.9]))
    .join('\n');

  it('get one common speed, a warning, and each place’s own', () => {
    const answer = solveTable(table);
    if ('error' in answer) throw new Error(answer.error);
    expect(answer.warnings.map(({ code }) => code)).toContain('several-places');
    expect(answer.places?.map(({ place }) => place)).toEqual(['hall', 'yard']);
    const [hall, yard] = answer.places ?? [];
    // 0.606 m/s per kelvin over 15 K (common practice).
    expect(Math.abs((hall?.speedMps ?? 0) - (yard?.speedMps ?? 0) - 9.1)).toBeLessThan(1);
    // The common one is for 12.5 °C, halfway.
    expect(Math.abs(answer.speedMps - ((hall?.speedMps ?? 0) + (yard?.speedMps ?? 0)) / 2)).toBeLessThan(0.2);
  });
});

describe('what was assumed or not read', () => {
  const codesOf = (text: string): string[] => {
    const answer = solveTable(text);
    if ('error' in answer) throw new Error(answer.error);
    return answer.warnings.map(({ code }) => code);
  };

  it('is said: the uncertainty of lengths and forks, and a heading that was likely meant', () => {
    const bare = codesOf('fork_hz,ends,length_cm,temp_c\n512,closed,15.8,20\n512,closed,49.2,20');
    expect(bare).toEqual(
      expect.arrayContaining(['length-uncertainty-assumed', 'fork-tolerance-assumed', 'columns-not-read']),
    );
    const stated = codesOf(
      'fork_hz,ends,length_cm,length_uncertainty_mm,fork_uncertainty_hz\n512,closed,15.8,1,0.5\n512,closed,49.2,1,0.5',
    );
    for (const code of ['length-uncertainty-assumed', 'fork-tolerance-assumed', 'columns-not-read'])
      expect(stated).not.toContain(code);
  });

  it('names every column that may be there', () => {
    const answer = solveTable('fork_hz,ends,length_cm,temp_c\n512,closed,15.8,20\n512,closed,49.2,20');
    if ('error' in answer) throw new Error(answer.error);
    const message = answer.warnings.find(({ code }) => code === 'columns-not-read')?.message ?? '';
    const named = READ_COLUMNS.filter((column) => new RegExp(`\\b${column}\\b`).test(message));
    const required: readonly string[] = REQUIRED_COLUMNS;
    expect(named).toEqual(READ_COLUMNS.filter((column) => !required.includes(column)));
  });

  it('leaves no hole where rows of one fork state different uncertainties of it', () => {
    const answer = solveTable(
      'fork_hz,ends,length_cm,fork_uncertainty_hz\n512,closed,15.8,5e-324\n512,closed,49.2,\n512,closed,82.9,',
    );
    const fork =
      'error' in answer ? undefined : answer.budget.find(({ quantity }) => quantity.startsWith('Frequency'));
    expect(fork?.sensitivity).toBeLessThan(10);
  });
});
