import { setTimeout as pause } from 'node:timers/promises';
import { INNER_VIEWS, VIEWS } from '../../../src/ui/views.ts';
import type { ViewId } from '../../../src/ui/views.ts';
import type { EnginePage } from '../engine.ts';
import type { EngineName } from '../findEngines.ts';
import { Person } from '../person.ts';

/** One view in one engine. */
export interface Picture {
  readonly engine: EngineName;
  readonly version: string;
  readonly view: ViewId;
  readonly width: number;
  readonly png: Uint8Array;
  /** The picture's own width: more than the view's where that stands in a frame. */
  readonly pngWidth: number;
}

/** WebKit's window is never narrower than this: a frame stands in for a telephone. */
const NARROWEST_WINDOW_PX = 447;
const FIRST_HEIGHT_PX = 800;
/** More of a view isn't shown. */
const HIGHEST_PX = 3000;
/** Until a view that loads and draws has come to rest, ms. */
const REST_MS = 1500;

/** A page of the same site that holds the bench in a narrow frame. */
export const NARROW_PAGE = `<!doctype html><meta name="color-scheme" content="light dark"><title>Narrow</title>
<style>body { margin: 0 } iframe { display: block; border: 0 }</style><iframe></iframe>
`;

/** All views at these widths, with a table of marks open. @param folder  the browser's own */
export async function takePictures(
  page: EnginePage,
  folder: string,
  url: string,
  table: string,
  widths: readonly number[],
): Promise<Picture[]> {
  const person = new Person(page, folder);
  await page.goTo(url);
  await person.goTo('Records');
  await person.chooseFile('Experiment file to open', table);
  await person.click('button', 'Open as a new experiment');
  await person.waitForWords(/^[\d.]+ ± [\d.]+ m\/s$/);
  await pause(REST_MS);
  const pictures: Picture[] = [];
  for (const width of widths) {
    for (const { id } of [...VIEWS, ...INNER_VIEWS]) {
      const picture = await pictureOf(page, `${url}#${id}`, width);
      pictures.push({ engine: page.engine, version: page.version, view: id, width, ...picture });
    }
  }
  return pictures;
}

async function pictureOf(
  page: EnginePage,
  url: string,
  width: number,
): Promise<Pick<Picture, 'png' | 'pngWidth'>> {
  const isFramed = page.engine === 'webkit' && width < NARROWEST_WINDOW_PX;
  const within = isFramed ? 'frames[0].document' : 'document';
  const pngWidth = isFramed ? NARROWEST_WINDOW_PX : width;
  await page.setSize(pngWidth, FIRST_HEIGHT_PX);
  if (isFramed) {
    await page.goTo(new URL('narrow.html', url).href);
    const frame = `document.querySelector('iframe')`;
    await page.evaluate(
      `(${frame}.style.width = '${width}px', ${frame}.style.height = '100vh', ${frame}.src = ${JSON.stringify(url)}, null)`,
    );
  } else {
    await page.goTo(url);
  }
  await pause(REST_MS);
  const height = await page.evaluate<number>(`${within}.documentElement.scrollHeight`);
  await page.setSize(pngWidth, Math.min(height, HIGHEST_PX));
  await pause(REST_MS / 2);
  return { png: await page.screenshot(), pngWidth };
}
