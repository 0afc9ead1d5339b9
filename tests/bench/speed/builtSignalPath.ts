import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { SignalPathResult } from './signalPath.ts';

const BUILDER = fileURLToPath(new URL('./buildSignalPath.ts', import.meta.url));

/**
 * `benchSignalPath` of the code as the page gets it: one file, built by Vite, in a process of its own. What reads
 * TypeScript module by module in Node costs the live path a quarter of its speed, and the page has none. Vite runs in
 * another process, too: what is started here later would count its memory as its own. @throws Error where either process fails
 */
export function benchBuiltSignalPath(): SignalPathResult {
  const folder = mkdtempSync(join(tmpdir(), 'bench-signal-path-'));
  try {
    run(['--import', 'tsx/esm', BUILDER, folder]);
    return JSON.parse(run([join(folder, 'signalPathProcess.mjs')])) as SignalPathResult;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** @returns what Node wrote @throws Error where it failed */
function run(words: readonly string[]): string {
  const { status, stdout, stderr } = spawnSync(process.execPath, words, { encoding: 'utf8' });
  if (status !== 0) throw new Error(`the signal path's bench failed: ${stderr}`);
  return stdout;
}
