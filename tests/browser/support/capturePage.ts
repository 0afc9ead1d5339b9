import { rm, mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { build, preview } from 'vite';

export interface ServedPage {
  readonly url: string;
  readonly port: number;
  close(): Promise<void>;
}

/** Builds the page that drives capture alone, as the site is built, and serves it on this machine. */
export async function serveCapturePage(): Promise<ServedPage> {
  const root = resolve(import.meta.dirname, '../pages');
  const outDir = await mkdtemp(join(tmpdir(), 'capture-page-'));
  const shared = { configFile: false as const, root, base: './', logLevel: 'warn' as const };
  await build({
    ...shared,
    worker: { format: 'es' },
    build: { outDir, target: 'es2022', emptyOutDir: true },
  });
  const server = await preview({
    ...shared,
    build: { outDir },
    // Any name may lead here: one test comes by a name that is no secure context.
    preview: { port: 0, host: '127.0.0.1', allowedHosts: true },
  });
  const url = server.resolvedUrls?.local[0];
  if (url === undefined) throw new Error('The preview server gave no address.');
  return {
    url,
    port: Number(new URL(url).port),
    close: async () => {
      await server.close();
      await rm(outDir, { recursive: true, force: true });
    },
  };
}
