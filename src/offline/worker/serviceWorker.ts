/**
 * Keeps the whole site in the browser, so that it works with the network off. A new version is fetched whole and
 * waits; it takes over when the page asks for it and no other tab uses the old one, or when all tabs are closed.
 */
const worker = self as unknown as ServiceWorkerGlobalScope;

interface SiteFiles {
  readonly version: string;
  readonly files: readonly string[];
}

/** Filled in by the build. */
const SITE = '__SITE_FILES__' as unknown as SiteFiles;
/** One origin may hold the bench at several paths. */
const PREFIX = `air-column-bench ${worker.registration.scope} `;
const CACHE = PREFIX + SITE.version;

worker.addEventListener('install', (event) => event.waitUntil(fetchSite()));
worker.addEventListener('activate', (event) => event.waitUntil(dropOldVersions()));
worker.addEventListener('message', (event) => {
  if (event.data === 'take over') event.waitUntil(takeOver(event.ports[0]));
});
worker.addEventListener('fetch', (event) => {
  if (event.request.method === 'GET' && event.request.url.startsWith(worker.registration.scope)) {
    event.respondWith(answer(event.request));
  }
});

/** All files or none: a version with holes never gets to work. */
async function fetchSite(): Promise<void> {
  const cache = await caches.open(CACHE);
  // Past the browser's own cache, which may hold files of the version before.
  await cache.addAll(SITE.files.map((file) => new Request(file, { cache: 'reload' })));
}

async function dropOldVersions(): Promise<void> {
  const names = await caches.keys();
  await Promise.all(
    names.filter((name) => name.startsWith(PREFIX) && name !== CACHE).map((name) => caches.delete(name)),
  );
  // The first visit too is served from here, from now on.
  await worker.clients.claim();
}

/** Answers true and takes over where only the asking tab is open; else false, and waits on. */
async function takeOver(port: MessagePort | undefined): Promise<void> {
  const all = await worker.clients.matchAll({ type: 'window', includeUncontrolled: true });
  // The host may show other things in other tabs, another copy of the bench for one.
  const isAlone = all.filter(({ url }) => isPage(url)).length <= 1;
  port?.postMessage(isAlone);
  if (isAlone) await worker.skipWaiting();
}

async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(CACHE);
  const wanted = request.mode === 'navigate' && isPage(request.url) ? 'index.html' : request;
  // Many hosts send “Vary: Origin”; the site's files are the same for whoever asks.
  return (await cache.match(wanted, { ignoreSearch: true, ignoreVary: true })) ?? fetch(request);
}

/** Whether this is the site's one page, by either of its addresses. */
function isPage(url: string): boolean {
  const { pathname } = new URL(url);
  const scope = new URL(worker.registration.scope).pathname;
  return pathname === scope || pathname === `${scope}index.html`;
}
