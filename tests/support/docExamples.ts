import { readFileSync } from 'node:fs';

/** An example in a docstring: what to run and what its last line gives. */
export interface DocExample {
  /** File and function. */
  readonly name: string;
  /** Statements before the last line. */
  readonly statements: string;
  readonly expression: string;
  /** An expression, too. */
  readonly value: string;
}

const ARROW = ' // → ';

/** The examples of a source file. Their last line reads `expression // → value`. */
export function docExamples(file: string): readonly DocExample[] {
  const text = readFileSync(file, 'utf8');
  return [
    ...text.matchAll(/\/\*\*((?:(?!\*\/)[\s\S])*?@example[\s\S]*?)\*\/\s*export (?:async )?function (\w+)/g),
  ].map(([, block = '', name = '']) => {
    const lines = block
      .slice(block.indexOf('@example') + '@example'.length)
      .split('\n')
      .map((line) => line.replace(/^\s*\* ?/, ''))
      .filter((line) => line.trim() !== '');
    const last = lines.pop() ?? '';
    const [expression = '', value] = last.split(ARROW);
    if (value === undefined) throw new Error(`${file}, ${name}: the last line must say what it gives`);
    return {
      name: `${file.split('/').at(-1) ?? file}, ${name}`,
      statements: lines.join('\n'),
      expression,
      value,
    };
  });
}

/** Runs an example with these names in reach. @returns what it gives and what it says that it gives */
export function runExample(
  { statements, expression, value }: DocExample,
  names: ReadonlyMap<string, unknown>,
): { readonly given: unknown; readonly stated: unknown } {
  // An example is this project's own text, run in a test.
  // eslint-disable-next-line @typescript-eslint/no-implied-eval
  const run = new Function(...names.keys(), `${statements}\nreturn [(${expression}), (${value})];`) as (
    ...values: unknown[]
  ) => [unknown, unknown];
  const [given, stated] = run(...names.values());
  return { given, stated };
}
