import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const PROJECT = resolve(import.meta.dirname, '../../..');
const FOLDERS = ['src', 'tests', 'build', 'public', 'fixtures'];
const files = FOLDERS.flatMap((folder) =>
  readdirSync(join(PROJECT, folder), { recursive: true, encoding: 'utf8' }).map((path) => join(folder, path)),
);

/** Paths and file names in a text: `src/…` and the like, and all that ends as this project's files do. */
function namedFiles(text: string): readonly string[] {
  const paths =
    text.match(new RegExp(`(?<![\\w./-])(?:${FOLDERS.join('|')}|\\.ci)/[\\w./-]*[\\w-]`, 'g')) ?? [];
  const names = text.match(/(?<![\w./$-])[a-z][\w-]*(?:[./][\w-]+)*\.(?:ts|json|csv)\b/g) ?? [];
  return [...new Set([...paths, ...names])];
}

/** A path from the project's root, or the end of some file's path. */
function isThere(name: string): boolean {
  return existsSync(join(PROJECT, name)) || files.some((path) => path.endsWith(`/${name}`));
}

describe.each([
  ['README.md', 2],
  ['DEVELOPERS.md', 40],
  ['src/capture/README.md', 10],
  ['src/notebook/README.md', 10],
  ['src/resonance/README.md', 20],
  ['src/session/README.md', 10],
  ['src/ui/README.md', 5],
  ['tests/bench/README.md', 1],
])('%s', (document, least) => {
  it('names only files and folders that there are', () => {
    const named = namedFiles(readFileSync(join(PROJECT, document), 'utf8'));
    expect(named.length).toBeGreaterThan(least);
    expect(named.filter((name) => !isThere(name))).toEqual([]);
  });
});

describe('namedFiles', () => {
  it('finds paths and names, in code or not', () => {
    expect(
      namedFiles(
        '`src/tone` and tests/bench/gone.ts; `tone/demodulator.ts`, (strikes.ts). See https://a.b/src/x',
      ),
    ).toEqual(['src/tone', 'tests/bench/gone.ts', 'tone/demodulator.ts', 'strikes.ts']);
    expect(isThere('tests/bench/gone.ts')).toBe(false);
    expect(isThere('gone.ts')).toBe(false);
    expect(isThere('strikes.ts')).toBe(true);
  });
});
