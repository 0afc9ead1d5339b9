import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { build } from 'vite';
import { serveSite } from '../../browser/support/siteServer.ts';
import { findEngines } from '../findEngines.ts';
import type { EngineName } from '../findEngines.ts';
import { startEngine } from '../startEngine.ts';
import { NARROW_PAGE, takePictures } from './pictures.ts';
import type { Picture } from './pictures.ts';
import { writeSheet } from './sheet.ts';

/**
 * Pictures of every view in every engine, one sheet for a width and a scheme with the engines side by side, for a
 * person to look at.
 */
const ENGINES = ['chromium', 'firefox', 'webkit'] as const satisfies readonly EngineName[];
const WIDTHS = [390, 820, 1280];
const SCHEMES = ['light', 'dark'] as const;

const { values } = parseArgs({
  options: {
    /** Where the sheets go; it is made where it isn't there. */
    into: { type: 'string', default: join(tmpdir(), 'air-column-bench-sheets') },
    widths: { type: 'string', default: WIDTHS.join(',') },
  },
});
const widths = values.widths.split(',').map(Number);
if (!widths.every((width) => width > 0)) {
  process.stderr.write('Usage: npm run sheets -- [--into FOLDER] [--widths 390,820,1280]\n');
  process.exit(2);
}
const into = resolve(values.into);
mkdirSync(into, { recursive: true });
const found = findEngines(false);
const engines = ENGINES.filter((name) => found[name] !== null);
const folder = mkdtempSync(join(tmpdir(), 'sheets-'));
const built = join(folder, 'site');
await build({ logLevel: 'error', build: { outDir: built, emptyOutDir: true } });
writeFileSync(join(built, 'narrow.html'), NARROW_PAGE);
const table = join(folder, 'three forks.csv');
cpSync(resolve(import.meta.dirname, '../../../fixtures/closed-tube-three-forks.csv'), table);
const site = await serveSite(built, '/');

try {
  for (const scheme of SCHEMES) {
    const pictures: Picture[] = [];
    for (const name of engines) {
      const own = mkdtempSync(join(folder, `${name}-`));
      const page = await startEngine(name, found, { folder: own, colorScheme: scheme });
      try {
        pictures.push(...(await takePictures(page, own, site.url, table, widths)));
      } finally {
        await page.close();
      }
    }
    for (const width of widths) {
      const path = join(into, `${width} ${scheme}.png`);
      await writeSheet(
        found,
        folder,
        pictures.filter((one) => one.width === width),
        path,
      );
      process.stdout.write(`${path}\n`);
    }
  }
} finally {
  await site.close();
  rmSync(folder, { recursive: true, force: true });
}
