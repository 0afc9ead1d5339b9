import { afterEach, expect, inject } from 'vitest';
import { BenchPage } from './benchPage.ts';
import { openPage } from './openPage.ts';
import type { OpenPageOptions, OpenedPage } from './openPage.ts';

/** How a file's tests open the built page. */
export interface EachBench {
  readonly open: (options?: Partial<OpenPageOptions>) => Promise<BenchPage>;
  /** What is open now; null between tests. */
  readonly current: () => OpenedPage | null;
}

/** One bench a test, closed after it. @param isFaultless  whether every test must leave the console without errors */
export function eachBench(isFaultless = false): EachBench {
  let opened: OpenedPage | null = null;
  afterEach(async () => {
    const faults = opened?.faults ?? [];
    await opened?.close();
    opened = null;
    if (isFaultless) expect(faults).toEqual([]);
  });
  return {
    open: async (options = {}) => {
      opened = await openPage({ chromiumPath: inject('chromiumPath'), url: inject('pageUrl'), ...options });
      return new BenchPage(opened.page);
    },
    current: () => opened,
  };
}
