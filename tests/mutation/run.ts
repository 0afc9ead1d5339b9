import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import type { Edit } from './edit.ts';
import { JUDGEMENT_EDITS } from './judgementEdits.ts';
import { UNCERTAINTY_EDITS } from './uncertaintyEdits.ts';

/*
 * npm run mutate [-- --only words]
 * Makes each edit of the list in a temporary copy and runs the fast tests there. An edit is killed where one fails.
 * Ends with status 1 where an edit no longer applies, where one survives that has no reason to, or where fewer are
 * killed than the goal.
 */

const PROJECT = resolve(import.meta.dirname, '../..');
const COPIED = [
  'src',
  'tests',
  'fixtures',
  'public',
  'build',
  'package.json',
  'tsconfig.json',
  'vite.config.ts',
];
/** All of the model's tests but the long runs. */
const TESTS = ['tests/unit/solver', 'tests/unit/air', 'tests/unit/numeric', 'tests/unit/cli/solve'];
const LONG = ['tests/unit/solver/monteCarlo.test.ts', 'tests/unit/cli/solveFuzz.test.ts'];
const GOAL = 0.85;

const { values } = parseArgs({ options: { only: { type: 'string', default: '' } } });

function textOf(file: string): string {
  return readFileSync(join(PROJECT, file), 'utf8');
}

/** Edits whose text isn't in its file exactly once. */
function misfits(edits: readonly Edit[]): readonly Edit[] {
  return edits.filter(({ file, text }) => textOf(file).split(text).length !== 2);
}

function copyProject(): string {
  const copy = mkdtempSync(join(tmpdir(), 'mutation-'));
  for (const name of COPIED) cpSync(join(PROJECT, name), join(copy, name), { recursive: true });
  symlinkSync(join(PROJECT, 'node_modules'), join(copy, 'node_modules'));
  return copy;
}

/** Whether all tests pass in the copy; a run that doesn't end counts as one that fails. */
function passes(copy: string): boolean {
  const words = ['run', '--project', 'unit', '--bail', '1', '--reporter', 'dot', ...TESTS];
  const left = LONG.flatMap((file) => ['--exclude', file]);
  const vitest = join(copy, 'node_modules', 'vitest', 'vitest.mjs');
  const run = spawnSync(process.execPath, [vitest, ...words, ...left], {
    cwd: copy,
    encoding: 'utf8',
    timeout: 300_000,
  });
  if (run.error !== undefined && run.signal === null) throw run.error;
  return run.status === 0;
}

function main(): boolean {
  const edits = [...UNCERTAINTY_EDITS, ...JUDGEMENT_EDITS].filter(({ file, why }) =>
    `${file} ${why}`.includes(values.only),
  );
  const gone = misfits(edits);
  for (const { file, text } of gone) print(`doesn't apply   ${file}: ${text}`);
  if (gone.length > 0) return false;
  const copy = copyProject();
  try {
    if (!passes(copy)) {
      print('The tests fail without any edit.');
      return false;
    }
    let [killed, unexplained] = [0, 0];
    for (const { file, text, replacement, why, survives } of edits) {
      const path = join(copy, file);
      writeFileSync(
        path,
        textOf(file).replace(text, () => replacement),
      );
      const isKilled = !passes(copy);
      writeFileSync(path, textOf(file));
      if (isKilled) killed += 1;
      if (!isKilled && survives === undefined) unexplained += 1;
      const reason = isKilled ? '' : `  [${survives ?? 'no reason'}]`;
      print(`${isKilled ? 'killed  ' : 'SURVIVED'}  ${file}: ${why}${reason}`);
    }
    const share = killed / edits.length;
    print(`${killed} of ${edits.length} killed (${(100 * share).toFixed(0)} %, goal ${100 * GOAL} %)`);
    return unexplained === 0 && share >= GOAL;
  } finally {
    rmSync(copy, { recursive: true });
  }
}

function print(text: string): void {
  process.stdout.write(`${text}\n`);
}

if (!main()) process.exitCode = 1;
