import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { EnginesFound } from '../findEngines.ts';
import { startEngine } from '../startEngine.ts';
import type { Picture } from './pictures.ts';

/** Widest that a picture stands on the sheet, CSS pixels. */
const WIDEST_PX = 560;
const MARGINS_PX = 16;
/** Views beside one another. */
const IN_A_ROW = 3;

/**
 * Lays pictures of one width out, view by view, its engines side by side, and keeps that as one picture.
 * @param folder  for what is needed meanwhile
 */
export async function writeSheet(
  found: EnginesFound,
  folder: string,
  pictures: readonly Picture[],
  path: string,
): Promise<void> {
  const views = [...new Set(pictures.map(({ view }) => view))];
  const shownPx = Math.min(pictures[0]?.width ?? 0, WIDEST_PX);
  const cell = ({ png, pngWidth, version, width }: Picture): string =>
    `<figure><figcaption>${version}</figcaption><img width="${(shownPx * pngWidth) / width}" src="data:image/png;base64,${Buffer.from(png).toString('base64')}"></figure>`;
  const groups = views.map((view) => {
    const cells = pictures.filter((one) => one.view === view).map(cell);
    return `<section><h1>${view}</h1>${cells.join('')}</section>`;
  });
  const html = join(folder, 'sheet.html');
  writeFileSync(
    html,
    `<!doctype html><meta charset="utf-8"><style>
body { margin: 8px; font: 14px sans-serif; background: #888 }
main { display: grid; grid-template-columns: repeat(${IN_A_ROW}, max-content); gap: 16px; width: max-content }
section { display: grid; grid-auto-flow: column; gap: 4px; align-content: start }
h1 { grid-column: 1 / -1; grid-row: 1; margin: 0 } figure { margin: 0; grid-row: 2; width: ${shownPx}px; overflow: hidden } img { display: block }</style>
<main>${groups.join('')}</main>`,
  );
  const page = await startEngine('chromium', found, { folder });
  try {
    await page.goTo(pathToFileURL(html).href);
    const size = await page.evaluate<{ width: number; height: number }>(
      `(({ scrollWidth: width, scrollHeight: height }) => ({ width, height }))(document.querySelector('main'))`,
    );
    await page.setSize(size.width + MARGINS_PX, size.height + MARGINS_PX);
    writeFileSync(path, await page.screenshot());
  } finally {
    await page.close();
  }
}
