// @vitest-environment node
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

const PROJECT = resolve(import.meta.dirname, '../../..');
const FOLDERS = ['src/numeric', 'src/tone', 'src/room', 'src/resonance', 'src/capture/signal'];

/** What a module keeps between calls: variables that change, and objects made once that can be written to. */
function stateIn(text: string): string[] {
  const source = ts.createSourceFile('module.ts', text, ts.ScriptTarget.ES2022, true);
  return source.statements.filter(ts.isVariableStatement).flatMap(({ declarationList }) => {
    const isConst = (declarationList.flags & ts.NodeFlags.Const) !== 0;
    return declarationList.declarations
      .filter(({ initializer }) => !isConst || (initializer !== undefined && isMade(initializer)))
      .map(({ name }) => name.getText());
  });
}

const isMade = (node: ts.Expression): boolean => {
  if (ts.isNewExpression(node)) return true;
  return ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression)
    ? isMade(node.expression.expression)
    : false;
};

describe.each(FOLDERS)('%s', (folder) => {
  it('keeps no state in its modules: a workspace belongs to the instance that uses it', () => {
    const files = readdirSync(join(PROJECT, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts'))
      .map((name) => join(PROJECT, folder, name));
    expect(files.length).toBeGreaterThan(0);
    expect(files.flatMap((file) => stateIn(readFileSync(file, 'utf8')))).toEqual([]);
  });
});

describe('the check of module state', () => {
  it('finds variables and made objects, and lets constants and functions be', () => {
    expect(stateIn('let a = 1; const b = new Map(); export const c = new Float64Array(9).fill(1);')).toEqual([
      'a',
      'b',
      'c',
    ]);
    expect(stateIn('const d = [1, 2] as const; const e = (): Map<string, 1> => new Map();')).toEqual([]);
  });
});
