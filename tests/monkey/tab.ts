import type { BrowserContext, Page } from 'playwright-core';

/** A pause of the page's main thread, and how slow the machine was just after it. */
export interface Pause {
  readonly durationMs: number;
  /** Time of a fixed calculation just after the pause over its shortest time in this tab: 1 on a machine at rest. */
  readonly slowness: number;
}

/** One tab of the site, and what went wrong in it so far. */
export interface Tab {
  readonly page: Page;
  readonly faults: string[];
}

/** Notes long tasks with the machine's own slowness beside them, since other programs may hold the processor. */
const WATCH_PAUSES = `
  globalThis.pausesSeen = [];
  {
    const calibrate = () => {
      const startMs = performance.now();
      let sum = 0;
      for (let i = 0; i < 300000; i += 1) sum += Math.sqrt(i);
      return sum > 0 ? performance.now() - startMs : 0;
    };
    let shortestMs = calibrate();
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) {
        if (duration < 500) continue;
        const nowMs = calibrate();
        shortestMs = Math.max(0.01, Math.min(shortestMs, nowMs));
        globalThis.pausesSeen.push({ durationMs: duration, slowness: nowMs / shortestMs });
      }
    }).observe({ type: 'longtask' });
  }
`;

/** Opens the site in a new tab of the same person's browser. */
export async function openTab(context: BrowserContext, url: string): Promise<Tab> {
  const page = await context.newPage();
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(`page error: ${String(error)}`));
  page.on('console', (message) => {
    if (message.type() === 'error' && !isExpected(message.text())) faults.push(`console: ${message.text()}`);
  });
  page.on('crash', () => faults.push('the tab crashed'));
  // What would leave unsaved work is confirmed, as a person in a hurry does.
  page.on('dialog', (dialog) => void dialog.accept().catch(() => undefined));
  await page.addInitScript(WATCH_PAUSES);
  await page.goto(url);
  return { page, faults };
}

/** Pauses since the last call. */
export function takePauses(page: Page): Promise<readonly Pause[]> {
  return page.evaluate(() => (globalThis as unknown as { pausesSeen?: Pause[] }).pausesSeen?.splice(0) ?? []);
}

/** The browser's own remarks where the monkey took the network away. */
function isExpected(text: string): boolean {
  return /ERR_INTERNET_DISCONNECTED|ERR_FAILED|Failed to load resource/.test(text);
}
