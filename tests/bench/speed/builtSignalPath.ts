import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { buildTarget } from '../../../build/browserFloor.ts';
import type { SignalPathResult } from './signalPath.ts';

const ENTRY = fileURLToPath(new URL('./signalPathProcess.ts', import.meta.url));

/**
 * `benchSignalPath` of the code as the page gets it: one file, built by Vite for the same browsers, in a process of its
 * own. What reads TypeScript module by module in Node costs the live path a quarter of its speed, and the page has none.
 */
export async function benchBuiltSignalPath(): Promise<SignalPathResult> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-signal-path-'));
  try {
    await build({
      configFile: false,
      logLevel: 'error',
      ssr: { noExternal: true },
      build: {
        ssr: ENTRY,
        target: buildTarget(),
        outDir: folder,
        copyPublicDir: false,
        rolldownOptions: { output: { entryFileNames: '[name].mjs' } },
      },
    });
    const built = join(folder, 'signalPathProcess.mjs');
    const child = spawnSync(process.execPath, [built], { encoding: 'utf8', env: {} });
    if (child.status !== 0) throw new Error(`the signal path's bench failed: ${child.stderr}`);
    return JSON.parse(child.stdout) as SignalPathResult;
  } finally {
    rmSync(folder, { recursive: true });
  }
}
