import type { Page } from 'playwright-core';

/** The one database of the time when all copies of the site on a host shared it. */
export const SHARED_DATABASE = 'air-column-bench';

/**
 * Makes the notebook's store as the first bench made it. Call it on a page of the origin that isn't the bench, as its
 * picture is.
 * @param records  the last one was open
 */
export async function storeOfFirstVersion(page: Page, records: readonly object[]): Promise<void> {
  await page.evaluate(
    ([name, kept]) =>
      new Promise<void>((resolve, reject) => {
        const asking = indexedDB.open(name, 1);
        asking.onupgradeneeded = () => {
          asking.result.createObjectStore('experiments', { keyPath: 'id' });
          asking.result.createObjectStore('desk');
        };
        asking.onerror = () => reject(new Error('no store'));
        asking.onsuccess = () => {
          const transaction = asking.result.transaction(['experiments', 'desk'], 'readwrite');
          for (const record of kept) {
            transaction.objectStore('experiments').put(record);
            transaction.objectStore('desk').put((record as { id: string }).id, 'open');
          }
          transaction.oncomplete = () => {
            asking.result.close();
            resolve();
          };
        };
      }),
    [SHARED_DATABASE, records] as const,
  );
}

/** A record as it lies in a database of this page's origin; undefined where it isn't there. */
export function recordInStore(page: Page, database: string, id: string): Promise<unknown> {
  return page.evaluate(
    ([name, key]) =>
      new Promise<unknown>((resolve, reject) => {
        const asking = indexedDB.open(name);
        asking.onerror = () => reject(new Error('no store'));
        // A database that isn't there would be made by asking for it.
        asking.onupgradeneeded = () => asking.transaction?.abort();
        asking.onsuccess = () => {
          const reading = asking.result.transaction('experiments').objectStore('experiments').get(key);
          reading.onsuccess = () => {
            asking.result.close();
            resolve(reading.result);
          };
        };
      }),
    [database, id] as const,
  );
}
