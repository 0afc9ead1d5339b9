import { openDB } from 'idb';
import type { DBSchema, IDBPDatabase } from 'idb';
import { scopedName } from './siteScope.ts';

const NAME = 'air-column-bench';
const OWNER_KEY = 'owner';

interface OldNotebook extends DBSchema {
  desk: { key: string; value: string };
}

/** The database that a copy of the site keeps its notebook in. */
export interface NotebookDatabase {
  readonly name: string;
  /** Whose the notebook from before copies were told apart is: null where it is this one's, or where there is none. */
  readonly olderOf: { readonly path: string | null } | null;
}

/**
 * Finds the database of the copy of the site at this path. There was a time when all copies on a host shared one
 * database. It is neither copied nor moved: one copy goes on using it, and notes its path inside. That is the first
 * one that comes, unless it has a notebook of its own already, or the browser shows that only other copies were used
 * here: each leaves the site's files in a cache that bears its address.
 */
export async function notebookDatabase(scope: string): Promise<NotebookDatabase> {
  const own = scopedName(NAME, scope);
  const old = await openIfThere(NAME);
  if (old === null) return { name: own, olderOf: null };
  try {
    if (!old.objectStoreNames.contains('desk')) return { name: own, olderOf: null };
    const owner = (await ownerOf(old)) ?? ((await mayClaim(own, scope)) ? await claim(old, scope) : null);
    return owner === scope ? { name: NAME, olderOf: null } : { name: own, olderOf: { path: owner } };
  } finally {
    old.close();
  }
}

async function ownerOf(old: IDBPDatabase<OldNotebook>): Promise<string | null> {
  const transaction = old.transaction('desk');
  const [owner] = await Promise.all([transaction.store.get(OWNER_KEY), transaction.done]);
  return owner ?? null;
}

/** One transaction: of two copies that come at the same moment one gets it. @returns whose it is now */
async function claim(old: IDBPDatabase<OldNotebook>, scope: string): Promise<string> {
  const transaction = old.transaction('desk', 'readwrite');
  const take = async (): Promise<string> => {
    const owner = await transaction.store.get(OWNER_KEY);
    if (owner === undefined) await transaction.store.put(scope, OWNER_KEY);
    return owner ?? scope;
  };
  const [owner] = await Promise.all([take(), transaction.done]);
  return owner;
}

async function mayClaim(own: string, scope: string): Promise<boolean> {
  const database = await openIfThere(own);
  database?.close();
  if (database !== null) return false;
  const addresses = await usedAddresses();
  const paths = addresses.map((address) => new URL(address).pathname);
  return paths.length === 0 || paths.includes(scope);
}

/** Addresses of the copies whose files this browser keeps for use without a network; empty where it won't say. */
async function usedAddresses(): Promise<readonly string[]> {
  try {
    const names = await caches.keys();
    return names.flatMap((name) => /^air-column-bench (https?:\/\/\S+) \S+$/.exec(name)?.[1] ?? []);
  } catch {
    return [];
  }
}

/** Opens a database as it is; null where there is none, and none is made. */
async function openIfThere(name: string): Promise<IDBPDatabase<OldNotebook> | null> {
  let isMissing = false;
  try {
    const database = await openDB<OldNotebook>(name, undefined, {
      upgrade(_fresh, _from, _to, transaction) {
        isMissing = true;
        transaction.done.catch(() => undefined);
        transaction.abort();
      },
      blocking: (_now, _blocked, event) => (event.target as IDBDatabase).close(),
    });
    return database;
  } catch (error) {
    if (isMissing) return null;
    throw error;
  }
}
