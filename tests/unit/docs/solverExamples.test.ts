import { readdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { docExamples, runExample } from '../../support/docExamples.ts';

const SOURCE = resolve(import.meta.dirname, '../../../src');
const filesOf = (folder: string): string[] =>
  readdirSync(join(SOURCE, folder))
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(SOURCE, folder, name));

/** Everything that these stages export may stand in an example without an import. */
const names = new Map<string, unknown>();
for (const file of [...['numeric', 'air', 'solver'].flatMap(filesOf), join(SOURCE, 'marks/marksTable.ts')]) {
  for (const [name, value] of Object.entries((await import(file)) as Record<string, unknown>)) {
    names.set(name, value);
  }
}

describe.each(['numeric', 'solver'])('examples in src/%s', (folder) => {
  const examples = filesOf(folder).flatMap(docExamples);

  it('are there', () => {
    expect(examples.length).toBeGreaterThan(9);
  });

  it.each(examples.map((example) => [example.name, example] as const))('%s', (_name, example) => {
    const { given, stated } = runExample(example, names);
    expect(given).toEqual(stated);
  });
});
