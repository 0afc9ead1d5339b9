import { readFileSync, readdirSync } from 'node:fs';
import { dirname, join, normalize, resolve } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

const SOURCE = resolve(import.meta.dirname, '../../../src');
/** From physics to page: a folder imports from those before it. What shares a line may not import from each other. */
const FLOW: readonly (readonly string[])[] = [
  ['limits', 'offline'],
  ['numeric'],
  ['air'],
  ['capture'],
  ['tone'],
  ['room'],
  ['resonance'],
  ['marks'],
  ['notebook'],
  ['solver'],
  ['session'],
  ['words'],
  ['report'],
  ['intake'],
  ['classroom'],
  ['cli', 'ui'],
];

interface Import {
  readonly from: string;
  readonly to: string;
}

const files = readdirSync(SOURCE, { recursive: true, encoding: 'utf8' })
  .map(normalize)
  .filter((path) => path.endsWith('.ts'));
const imports = files.flatMap((from): Import[] =>
  ts
    .preProcessFile(readFileSync(join(SOURCE, from), 'utf8'))
    .importedFiles.map(({ fileName }) => fileName.replace(/\?.*$/, ''))
    .filter((name) => name.startsWith('.'))
    .map((name) => ({ from, to: normalize(join(dirname(from), name)) })),
);
const folderOf = (path: string): string => path.split(/[/\\]/)[0] ?? path;
const levelOf = (path: string): number => FLOW.findIndex((folders) => folders.includes(folderOf(path)));

/** Ways from a file back to itself, each once, by depth first search. */
function circles(): string[] {
  const next = new Map<string, string[]>();
  for (const { from, to } of imports) next.set(from, [...(next.get(from) ?? []), to]);
  const found: string[] = [];
  const done = new Set<string>();
  const visit = (file: string, way: readonly string[]): void => {
    const at = way.indexOf(file);
    if (at >= 0) found.push([...way.slice(at), file].join(' → '));
    if (at >= 0 || done.has(file)) return;
    for (const to of next.get(file) ?? []) visit(to, [...way, file]);
    done.add(file);
  };
  for (const file of files) visit(file, []);
  return found;
}

describe('imports', () => {
  it('are found at all, and every folder has its place', () => {
    expect(imports.length).toBeGreaterThan(1000);
    expect(imports.filter(({ to }) => to.endsWith('.ts') && !files.includes(to))).toEqual([]);
    expect(files.filter((file) => levelOf(file) < 0)).toEqual([]);
  });

  it('run from page to physics only', () => {
    const against = imports
      .filter(({ from, to }) => folderOf(from) !== folderOf(to) && levelOf(to) >= levelOf(from))
      .map(({ from, to }) => `${from} imports ${to}`);
    expect(against).toEqual([]);
  });

  it('make no circle', () => {
    expect(circles()).toEqual([]);
  });
});
