import { expect, inject, it } from 'vitest';
import { writeFilesAtHand } from '../monkey/filesAtHand.ts';
import { letMonkeyLoose } from '../monkey/monkey.ts';
import { scratchFolder } from './support/benchPage.ts';
import { openBrowser } from './support/openPage.ts';

/** Half a minute of what `npm run monkey` does for as long as one likes. */
const SECONDS = 30;
const FEWEST_ACTIONS = 30;

it('finds nothing wrong after half a minute of random clicks, keys, texts, files, reloads and tabs', async () => {
  const browser = await openBrowser({ chromiumPath: inject('chromiumPath') });
  try {
    const context = await browser.newContext({
      viewport: { width: 1280, height: 800 },
      acceptDownloads: true,
    });
    const startMs = performance.now();
    const { steps, findings } = await letMonkeyLoose({
      seed: 1,
      steps: 400,
      isOver: () => performance.now() - startMs > SECONDS * 1000,
      context,
      url: inject('pageUrl'),
      files: writeFilesAtHand(scratchFolder()),
    });
    expect(findings).toEqual([]);
    expect(steps).toBeGreaterThan(FEWEST_ACTIONS);
  } finally {
    await browser.close();
  }
});
