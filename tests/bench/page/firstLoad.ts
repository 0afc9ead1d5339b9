import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';

/** What comes over the line until the page can be used, and how long that takes. */
export interface FirstLoad {
  /** Script as a static host would send it, bytes of gzip; what loads later by itself included. */
  readonly scriptBytes: number;
  /** The same once the bench has begun to listen: the strip's chart comes with the first sound. */
  readonly listeningScriptBytes: number;
  readonly otherBytes: number;
  /** From pressing Listen to the words that ask for a strike, ms: the bench knows the room by then. */
  readonly listeningMs: number;
}

interface Body {
  readonly isScript: boolean;
  readonly bytes: number;
}

/** Opens the page as a first visitor and listens to the practice column. The page is left listening. */
export async function measureFirstLoad(page: Page, url: string): Promise<FirstLoad> {
  const bodies: Promise<Body>[] = [];
  page.on('response', (response) => {
    const isScript = response.url().endsWith('.js');
    bodies.push(
      response
        .body()
        .catch(() => Buffer.alloc(0))
        .then((body) => ({ isScript, bytes: gzipSync(body, { level: 9 }).length })),
    );
  });
  await page.goto(url);
  await page.getByRole('slider', { name: 'Length of the column' }).waitFor();
  await page.getByRole('button', { name: 'Listen', exact: true }).waitFor();
  await page.waitForTimeout(1000);
  const loaded = await Promise.all(bodies);
  const pressed = performance.now();
  await page.getByRole('button', { name: 'Listen', exact: true }).click();
  await page.getByText('Strike the fork and hold it at the mouth').waitFor();
  const listeningMs = performance.now() - pressed;
  await page.waitForTimeout(1000);
  const listening = await Promise.all(bodies);
  return {
    scriptBytes: sizeOf(loaded, true),
    listeningScriptBytes: sizeOf(listening, true),
    otherBytes: sizeOf(loaded, false),
    listeningMs,
  };
}

function sizeOf(bodies: readonly Body[], isScript: boolean): number {
  return bodies.filter((one) => one.isScript === isScript).reduce((sum, one) => sum + one.bytes, 0);
}
