import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
};

/** A plain static host on this machine that serves one folder at one path, and can go away. */
export interface SiteServer {
  readonly url: string;
  /** The folder that is served from now on. */
  folder: string;
  /** Paths that were asked for so far. */
  readonly asked: readonly string[];
  /** The network is off: every connection is cut and none is taken. */
  close(): Promise<void>;
}

/** @param path  begins and ends with a slash */
export async function serveSite(folder: string, path: string): Promise<SiteServer> {
  const asked: string[] = [];
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://host');
    asked.push(pathname);
    const inside = pathname.startsWith(path) ? normalize(pathname.slice(path.length - 1)) : null;
    const file =
      inside === null ? '' : join(site.folder, inside.endsWith('/') ? `${inside}index.html` : inside);
    if (inside === null || !existsSync(file) || !statSync(file).isFile()) {
      response.writeHead(404).end('not here');
      return;
    }
    // As hosts do that let other sites read their files: the browser's store must find them all the same.
    const vary = { vary: 'Origin, Accept-Encoding', 'access-control-allow-origin': '*' };
    response.writeHead(200, { 'content-type': TYPES[extname(file)] ?? 'application/octet-stream', ...vary });
    createReadStream(file).pipe(response);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const site: SiteServer = {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}${path}`,
    folder,
    asked,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
  return site;
}
