// @vitest-environment node
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { compileFunction } from 'node:vm';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

const PROJECT = resolve(import.meta.dirname, '../../..');
const FOLDERS = ['src/air', 'src/marks', 'src/numeric', 'src/solver', 'src/tone'];
/** Folders of which every exported function must have an example. */
const COMPLETE = ['src/air', 'src/numeric', 'src/tone'];
/** Decimals to which a computed number must agree where the example states none. */
const DECIMALS = 9;

/** An exported function with the code of its `@example`s. */
interface PublicFunction {
  readonly name: string;
  readonly file: string;
  readonly examples: readonly string[];
}

/** One line of an example: code, and what it is said to give; null: it only prepares. */
interface Step {
  readonly code: string;
  readonly value: string | null;
}

const filesIn = (folder: string): string[] =>
  readdirSync(join(PROJECT, folder))
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(PROJECT, folder, name));

function publicFunctions(path: string): PublicFunction[] {
  const text = readFileSync(path, 'utf8');
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true);
  return source.statements.flatMap((statement) =>
    isExported(statement)
      ? namesOfFunctions(statement).map((name) => ({
          name,
          file: relative(PROJECT, path),
          examples: examplesOf(statement),
        }))
      : [],
  );
}

const isExported = (statement: ts.Statement): boolean =>
  ts.canHaveModifiers(statement) &&
  (ts.getModifiers(statement) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);

function namesOfFunctions(statement: ts.Statement): string[] {
  if (ts.isFunctionDeclaration(statement)) return statement.name === undefined ? [] : [statement.name.text];
  if (!ts.isVariableStatement(statement)) return [];
  return statement.declarationList.declarations
    .filter(({ initializer }) => initializer !== undefined && ts.isArrowFunction(initializer))
    .map(({ name }) => name.getText());
}

const examplesOf = (statement: ts.Statement): string[] =>
  ts
    .getJSDocTags(statement)
    .filter(({ tagName }) => tagName.text === 'example')
    .map(({ comment }) => ts.getTextOfJSDocComment(comment) ?? '');

/** `code // → value` ends a step; what stands before it without a value prepares it. */
function stepsOf(example: string): Step[] {
  const steps: Step[] = [];
  let code: string[] = [];
  for (const line of example.split('\n')) {
    const [before, value] = line.split('// →');
    if (value === undefined) {
      code.push(line);
      continue;
    }
    if (code.length > 0) steps.push({ code: code.join('\n'), value: null });
    steps.push({ code: before.trim(), value: value.trim() });
    code = [];
  }
  if (code.join('').trim() !== '') throw new Error(`An example's last line states no value: ${example}`);
  return steps;
}

/** Runs an example; `scope` holds what it may call. @returns pairs of what came out and the text of what was stated */
function run(example: string, scope: Record<string, unknown>): [computed: unknown, stated: string][] {
  const results: [unknown, string][] = [];
  const body = stepsOf(example).map(({ code, value }) =>
    value === null ? code : `report((${code}), ${JSON.stringify(value)});`,
  );
  const report = (computed: unknown, stated: string): number => results.push([computed, stated]);
  compiled(body.join('\n'), [...Object.keys(scope), 'report'])(...Object.values(scope), report);
  return results;
}

const compiled = (body: string, names: readonly string[]) =>
  compileFunction(body, [...names]) as (...values: unknown[]) => unknown;

/** A number agrees to the decimals that are stated, or to nine where it is one of several or none is stated. */
function expectStated(computed: unknown, stated: string): void {
  if (typeof computed === 'number' && /^-?[\d_]+(\.\d+)?$/.test(stated)) {
    const decimals = stated.split('.').at(1)?.length ?? 0;
    expect(computed.toFixed(decimals)).toBe(Number(stated.replaceAll('_', '')).toFixed(decimals));
    return;
  }
  expect(rounded(computed)).toEqual(rounded(compiled(`return (${stated});`, [])()));
}

/** The same with all numbers rounded and typed arrays as plain ones. */
function rounded(value: unknown): unknown {
  if (typeof value === 'number') return Number(value.toFixed(DECIMALS)) + 0;
  if (ArrayBuffer.isView(value)) return Array.from(value as Float64Array, rounded);
  if (Array.isArray(value)) return value.map(rounded);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, rounded(part)]));
}

const paths = FOLDERS.flatMap(filesIn);
const functions = paths.flatMap(publicFunctions);
const modules = await Promise.all(
  paths.map((path) => import(/* @vite-ignore */ path) as Promise<Record<string, unknown>>),
);
const scope = Object.assign({}, ...modules) as Record<string, unknown>;

describe('examples in the docstrings of public functions', () => {
  const withExamples = functions.filter(({ examples }) => examples.length > 0);

  it.each(withExamples)('$name ($file) gives what its example states', ({ examples }) => {
    for (const example of examples) {
      const results = run(example, scope);
      expect(results.length).toBeGreaterThan(0);
      for (const [computed, stated] of results) expectStated(computed, stated);
    }
  });

  it.each(COMPLETE)('%s has one for each exported function', (folder) => {
    const own = functions.filter(({ file }) => file.startsWith(`${folder}/`));
    expect(own.length).toBeGreaterThan(0);
    expect(own.filter(({ examples }) => examples.length === 0).map(({ name }) => name)).toEqual([]);
  });
});

describe('the check of examples', () => {
  it('fails on a wrong value, on the last decimal that is stated, and on an example without a value', () => {
    const check = (example: string): void => {
      for (const [computed, stated] of run(example, { third: () => 1 / 3 })) expectStated(computed, stated);
    };
    expect(() => check('third() // → 0.333')).not.toThrow();
    expect(() => check('third() // → 0.334')).toThrow();
    expect(() => check('const three = 3;\n[three, third()] // → [3, 0.333]')).toThrow();
    expect(() => check('({ a: Float64Array.of(1) }) // → { a: [1] }')).not.toThrow();
    expect(() => check("'a' // → 'b'")).toThrow();
    expect(() => check('third()')).toThrow(/states no value/);
  });
});
