import { execFile, execFileSync, spawnSync } from 'node:child_process';
import {
  createReadStream,
  existsSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, parse, resolve, sep } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { mayRead, takeFaults } from '../../support/readGuard.js';

const PROJECT = resolve(import.meta.dirname, '../../..');
/** Beside everything that a test may read, on any machine; nothing is there. */
const OUTSIDE = join(parse(PROJECT).root, 'somewhere else', 'voice.wav');
const REFUSED =
  /^A test may read the project, its packages, the temporary folder and the browser, not this: /;

/** Faults noted by this file's own doing, so that they don't count against it. */
const faultsOf = (reads: () => unknown): readonly string[] => {
  expect(reads).toThrow(REFUSED);
  return takeFaults();
};

describe('a read from outside, in a test', () => {
  it.each([
    ['readFileSync', () => readFileSync(OUTSIDE)],
    ['existsSync', () => existsSync(OUTSIDE)],
    ['statSync', () => statSync(Buffer.from(OUTSIDE))],
    ['readdirSync', () => readdirSync(pathToFileURL(resolve(OUTSIDE, '..')))],
    ['createReadStream', () => createReadStream(OUTSIDE)],
    ['readFile', () => void readFile(OUTSIDE)],
    // Out of the project by a relative path.
    ['existsSync', () => existsSync(`${'../'.repeat(60)}somewhere else`)],
  ])('is refused with its path and noted: %s', (name, read) => {
    const faults = faultsOf(read);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toContain(`${name} of ${parse(PROJECT).root}`);
    expect(faults[0]).toContain(import.meta.filename);
  });

  it('is noted even where the refusal is caught', () => {
    const isThere = (): boolean => {
      try {
        return existsSync(OUTSIDE);
      } catch {
        return false;
      }
    };
    expect(isThere()).toBe(false);
    expect(takeFaults()).toEqual([expect.stringContaining(OUTSIDE)]);
  });
});

describe('a command of the system, in a test', () => {
  it.each([
    ['execFileSync', () => execFileSync('espeak-ng', ['--version'])],
    ['spawnSync', () => spawnSync('python3', ['--version'])],
    ['execFile', () => execFile('which', ['sox'])],
  ])('is refused with its name: %s', (name, start) => {
    expect(faultsOf(start)).toEqual([expect.stringContaining(`${name} of the command `)]);
  });

  it('is guarded itself where it is Node: what it reads outside is the test’s fault', () => {
    const script = join(mkdtempSync(join(tmpdir(), 'guarded-')), 'reader.mjs');
    // Catches what it is told, as programs do that try one place after the other.
    writeFileSync(
      script,
      `import { readFileSync } from 'node:fs'; try { readFileSync(${JSON.stringify(OUTSIDE)}); } catch {} console.log('went on');`,
    );
    expect(execFileSync(process.execPath, [script], { encoding: 'utf8' })).toBe('went on\n');
    expect(takeFaults()).toEqual([expect.stringContaining(`readFileSync of ${OUTSIDE} (by ${script})`)]);
  });
});

describe('what a test brings', () => {
  it('may be read: the project, its packages, the temporary folder', () => {
    expect(readFileSync(join(PROJECT, 'package.json'), 'utf8')).toContain('air-column-bench');
    expect(existsSync(join(PROJECT, 'node_modules', 'lit', 'package.json'))).toBe(true);
    expect(readdirSync(mkdtempSync(join(tmpdir(), 'guarded-')))).toEqual([]);
    expect(takeFaults()).toEqual([]);
  });

  it('is not a folder whose name only begins as theirs', () => {
    expect(mayRead(`${tmpdir()}${sep}a`, () => 'unknown')).toBe(true);
    expect(mayRead(`${tmpdir()} of somebody else`, () => 'unknown')).toBe(false);
  });

  it('is not what a package reads for a test, but for the driver’s look at the system that it runs on', () => {
    const driver = join(PROJECT, 'node_modules', 'playwright-core', 'lib', 'coreBundle.js');
    expect(mayRead('/etc/os-release', () => driver)).toBe(true);
    expect(mayRead('/etc/passwd', () => driver)).toBe(false);
    expect(mayRead('/etc/os-release', () => join(PROJECT, 'node_modules', 'lit', 'index.js'))).toBe(false);
    expect(mayRead('/etc/os-release', () => import.meta.filename)).toBe(false);
  });
});
