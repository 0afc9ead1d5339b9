import type { Browser, Page } from 'playwright-core';
import { openPage } from '../../browser/support/openPage.ts';

/** How long a person waits for a practice column that can be listened to. */
export interface ReadyTime {
  /** From the navigation's start to the handle and the Listen button being drawn, ms, each opening. */
  readonly clockMs: readonly number[];
  /** Processor time that the page's main thread used until then, ms, each opening. */
  readonly cpuMs: readonly number[];
}

/** The page itself says when it is ready, at the next picture of the screen: waiting from outside would add to it. */
export const WATCH_FOR_COLUMN = `(() => {
  const look = () => {
    const stage = document.querySelector('bench-app')?.shadowRoot?.querySelector('bench-stage')?.shadowRoot;
    const handle = stage?.querySelector('bench-column')?.shadowRoot?.querySelector('input[type=range]');
    const listen = stage?.querySelector('bench-source')?.shadowRoot?.querySelector('button.listen');
    if (handle && listen) window.columnReadyMs = performance.now();
    else requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
})();`;

/** As first visitors: each time with nothing stored. The server is on this machine, so the line costs nothing. */
export async function readyCold(
  browser: Browser,
  chromiumPath: string,
  url: string,
  times: number,
): Promise<ReadyTime> {
  const clockMs: number[] = [];
  const cpuMs: number[] = [];
  for (let i = 0; i < times; i += 1) {
    const opened = await openPage({
      chromiumPath,
      browser,
      url: 'about:blank',
      beforeScripts: WATCH_FOR_COLUMN,
    });
    const found = await measure(opened.page, () => opened.page.goto(url));
    clockMs.push(found.clockMs);
    cpuMs.push(found.cpuMs);
    await opened.close();
  }
  return { clockMs, cpuMs };
}

/** As a visitor who comes again: the service worker has the site and answers for it. */
export async function readyFromWorker(
  browser: Browser,
  chromiumPath: string,
  url: string,
  times: number,
): Promise<ReadyTime> {
  const opened = await openPage({ chromiumPath, browser, url, beforeScripts: WATCH_FOR_COLUMN });
  const { page } = opened;
  try {
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    const clockMs: number[] = [];
    const cpuMs: number[] = [];
    for (let i = 0; i < times; i += 1) {
      const found = await measure(page, () => page.reload());
      const isFromWorker = await page.evaluate(
        () => (performance.getEntriesByType('navigation')[0] as PerformanceNavigationTiming).workerStart > 0,
      );
      if (!isFromWorker) throw new Error('The page did not come from the service worker.');
      clockMs.push(found.clockMs);
      cpuMs.push(found.cpuMs);
    }
    return { clockMs, cpuMs };
  } finally {
    await opened.close();
  }
}

async function measure(
  page: Page,
  open: () => Promise<unknown>,
): Promise<{ clockMs: number; cpuMs: number }> {
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  await open();
  const handle = await page.waitForFunction(
    () => (window as unknown as { columnReadyMs?: number }).columnReadyMs ?? false,
  );
  const { metrics } = await session.send('Performance.getMetrics');
  await session.detach();
  const taskS = metrics.find((metric) => metric.name === 'TaskDuration')?.value ?? 0;
  return { clockMs: Number(await handle.jsonValue()), cpuMs: taskS * 1000 };
}
