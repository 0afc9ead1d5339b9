import { createHash } from 'node:crypto';
import { readFileSync, readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import type { Plugin } from 'vite';
import { CONTENT_POLICY } from './contentPolicy.ts';

/** The service worker's file, at the top of the site because it serves what lies beside and below it. */
export const SERVICE_WORKER = 'service-worker.js';
/** Stands in the service worker's source where the list of the site's files belongs. */
const PLACE_OF_LIST = '__SITE_FILES__';

/** What only the built site has: its content policy, and in its service worker the list of its own files. */
export function siteFiles(): Plugin {
  let publicDir = '';
  return {
    name: 'site-files',
    apply: 'build',
    enforce: 'post',
    configResolved(config) {
      publicDir = config.publicDir;
    },
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: CONTENT_POLICY },
        injectTo: 'head-prepend',
      },
    ],
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        const worker = bundle[SERVICE_WORKER];
        if (worker?.type !== 'chunk') return;
        const hashes = new Map<string, string>();
        for (const [name, file] of Object.entries(bundle)) {
          if (name === SERVICE_WORKER || name.endsWith('.map')) continue;
          hashes.set(name, hash(file.type === 'chunk' ? file.code : file.source));
        }
        for (const name of filesIn(publicDir)) hashes.set(name, hash(readFileSync(join(publicDir, name))));
        const files = [...hashes].sort(([one], [other]) => (one < other ? -1 : 1));
        const list = JSON.stringify({
          version: hash(JSON.stringify(files)),
          files: files.map(([name]) => name),
        });
        // The list changes with any file of the site, and with it the worker: that is how browsers see an update.
        worker.code = worker.code.replace(new RegExp(`(["'\`])${PLACE_OF_LIST}\\1`), () => list);
        if (!worker.code.includes(list)) this.error(`${PLACE_OF_LIST} is missing in the service worker`);
      },
    },
  };
}

/** Paths of all files of a folder, with slashes, relative to it. */
function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).replaceAll('\\', '/'));
}

function hash(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('hex').slice(0, 16);
}
