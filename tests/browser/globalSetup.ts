import type {} from 'vitest';
import { build, preview } from 'vite';
import type { TestProject } from 'vitest/node';
import { guardReads, takeFaults } from '../support/readGuard.js';
import { findEngines } from '../engines/findEngines.ts';
import type { EnginesFound } from '../engines/findEngines.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    chromiumPath: string;
    engines: EnginesFound;
    pageUrl: string;
  }
}

/** Builds the site once, serves it as a static host would, and tells the tests where the browsers are. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  guardReads({ isRunner: true });
  const engines = findEngines(process.env['ALL_ENGINES'] === '1');
  project.provide('engines', engines);
  project.provide('chromiumPath', engines.chromium.browser);
  await buildAsPublished();
  const faults = takeFaults();
  if (faults.length > 0) throw new Error(faults.join('\n'));
  const server = await preview({ preview: { port: 0, host: '127.0.0.1' }, logLevel: 'warn' });
  const url = server.resolvedUrls?.local[0];
  if (url === undefined) throw new Error('The preview server gave no address.');
  project.provide('pageUrl', url);
  return () => server.close();
}

/** The very site that a host gets: under the test runner's own NODE_ENV the build would be another one. */
async function buildAsPublished(): Promise<void> {
  const before = process.env['NODE_ENV'];
  process.env['NODE_ENV'] = 'production';
  await build({ logLevel: 'warn' });
  process.env['NODE_ENV'] = before;
}
