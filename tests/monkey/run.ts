import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { build, preview } from 'vite';
import { findChromium } from '../browser/findChromium.ts';
import { openBrowser } from '../browser/support/openPage.ts';
import { writeFilesAtHand } from './filesAtHand.ts';
import { letMonkeyLoose } from './monkey.ts';

/**
 * A monkey at the built page. Usage: npm run monkey -- [--seed 1] [--minutes 5 | --steps 500] [--quiet]
 * Prints every action as it is done. What it finds comes last, with the actions before it; exit status 1 then.
 */
const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: '1' },
    minutes: { type: 'string', default: '5' },
    steps: { type: 'string', default: '1000000' },
    quiet: { type: 'boolean', default: false },
  },
});
const seed = Number(values.seed);
const minutes = Number(values.minutes);
const steps = Number(values.steps);
if (!Number.isInteger(seed) || !(minutes > 0) || !(steps > 0)) {
  process.stderr.write('Usage: npm run monkey -- [--seed N] [--minutes M] [--steps N] [--quiet]\n');
  process.exit(2);
}

const folder = mkdtempSync(join(tmpdir(), 'bench-monkey-'));
const site = join(folder, 'site');
process.env['NODE_ENV'] = 'production';
await build({ logLevel: 'error', build: { outDir: site, emptyOutDir: true } });
const server = await preview({
  logLevel: 'warn',
  build: { outDir: site },
  preview: { port: 0, host: '127.0.0.1' },
});
const url = server.resolvedUrls?.local[0] ?? '';
const browser = await openBrowser({ chromiumPath: findChromium() });
try {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, acceptDownloads: true });
  const startMs = performance.now();
  const report = await letMonkeyLoose({
    seed,
    steps,
    isOver: () => performance.now() - startMs > minutes * 60_000,
    context,
    url,
    files: writeFilesAtHand(folder),
    ...(values.quiet ? {} : { onAction: (line: string) => process.stdout.write(`${line}\n`) }),
  });
  process.stdout.write(`\nSeed ${seed}: ${report.steps} actions, ${report.reloads} reloads.\n`);
  for (const { step, what, actions } of report.findings) {
    process.stdout.write(
      `\nFound at action ${step}: ${what}\n${actions.map((line) => `  ${line}\n`).join('')}`,
    );
    process.stdout.write(`Again: npm run monkey -- --seed ${seed} --steps ${step}\n`);
  }
  process.stdout.write(`${report.findings.length} found.\n`);
  process.exitCode = report.findings.length === 0 ? 0 : 1;
} finally {
  await browser.close();
  await server.close();
  rmSync(folder, { recursive: true, force: true });
}
