import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';

/** What comes over the line until the page can be used, and how long that takes. */
export interface FirstLoad {
  /** Script as a static host would send it, bytes of gzip; what loads later by itself included. */
  readonly scriptBytes: number;
  readonly otherBytes: number;
  /** From the first request to a practice column that can be listened to, ms. */
  readonly columnMs: number;
  /** From pressing Listen to the words that ask for a strike, ms: the bench knows the room by then. */
  readonly listeningMs: number;
}

/** Opens the page as a first visitor and listens to the practice column. The page is left listening. */
export async function measureFirstLoad(page: Page, url: string): Promise<FirstLoad> {
  const bodies: Promise<{ isScript: boolean; bytes: number }>[] = [];
  page.on('response', (response) => {
    const isScript = response.url().endsWith('.js');
    bodies.push(
      response
        .body()
        .catch(() => Buffer.alloc(0))
        .then((body) => ({ isScript, bytes: gzipSync(body, { level: 9 }).length })),
    );
  });
  const start = performance.now();
  await page.goto(url);
  await page.getByRole('slider', { name: 'Length of the column' }).waitFor();
  await page.getByRole('button', { name: 'Listen', exact: true }).waitFor();
  const columnMs = performance.now() - start;
  await page.waitForTimeout(1000);
  const loaded = await Promise.all(bodies);
  const pressed = performance.now();
  await page.getByRole('button', { name: 'Listen', exact: true }).click();
  await page.getByText('Strike the fork, hold it to the mouth').waitFor();
  const sum = (isScript: boolean): number =>
    loaded.filter((one) => one.isScript === isScript).reduce((total, one) => total + one.bytes, 0);
  return {
    scriptBytes: sum(true),
    otherBytes: sum(false),
    columnMs,
    listeningMs: performance.now() - pressed,
  };
}
