import { existsSync, readFileSync, statSync } from 'node:fs';
import { decodeText } from '../intake/decodeText.ts';
import { LARGEST_TABLE_BYTES } from '../limits/sizes.ts';
import { locate } from './locate.ts';
import { solveSummary } from './solveSummary.ts';
import { solveTable } from './solveTable.ts';
import { solveUsage } from './solveUsage.ts';
import { speakEnglish } from '../words/english.ts';

speakEnglish();

function readText(file: string): string {
  const path = locate(file);
  if (!existsSync(path)) throw new Error(`there is no such file (looked for ${path}).`);
  const stats = statSync(path);
  if (stats.isDirectory()) throw new Error('this is a folder, not a file.');
  if (stats.size > LARGEST_TABLE_BYTES)
    throw new Error(`the file is larger than ${LARGEST_TABLE_BYTES / 1e6} MB, which is no table of marks.`);
  return decodeText(readFileSync(path));
}

function solveFile(file: string, asJson: boolean): boolean {
  let error: string;
  try {
    const result = solveTable(readText(file));
    if (!('error' in result)) {
      const line = asJson ? JSON.stringify({ file, ...result }) : solveSummary(file, result);
      process.stdout.write(`${line}\n`);
      return true;
    }
    error = result.error;
  } catch (thrown) {
    error = thrown instanceof Error ? thrown.message : String(thrown);
  }
  process.stdout.write(asJson ? `${JSON.stringify({ file, error })}\n` : `${file}\n  can’t be used\n\n`);
  process.stderr.write(`${file}: ${error}\n`);
  return false;
}

function main(words: readonly string[]): number {
  const options = words.filter((word) => word.startsWith('--'));
  const files = words.filter((word) => !word.startsWith('--'));
  if (options.includes('--help')) {
    process.stdout.write(`${solveUsage()}\n`);
    return 0;
  }
  const unknown = options.find((option) => option !== '--json');
  if (unknown !== undefined || files.length === 0) {
    process.stderr.write(
      `${unknown === undefined ? 'no file given' : `unknown option ${unknown}`}\n${solveUsage()}\n`,
    );
    return 1;
  }
  const done = files.map((file) => solveFile(file, options.includes('--json')));
  return done.every(Boolean) ? 0 : 1;
}

// Whoever reads only the first lines (| head) closes the pipe: that is no fault.
process.stdout.on('error', () => process.exit());
process.exitCode = main(process.argv.slice(2));
