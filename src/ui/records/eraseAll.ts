import { NotebookStore } from '../../notebook/notebookStore.ts';
import { tabMemory } from '../../notebook/tabMemory.ts';
import { forgetTheme } from '../themeChoice.ts';

/** What the browser says of this page's storage; null where it says nothing. */
export interface StoredFacts {
  readonly usedBytes: number | null;
  /** Whether the browser has promised not to clear it by itself. */
  readonly isPersistent: boolean | null;
}

export async function storedFacts(): Promise<StoredFacts> {
  const storage = (navigator as Partial<Navigator>).storage;
  const [estimate, isPersistent] = await Promise.all([
    storage?.estimate?.().catch(() => null),
    storage?.persisted?.().catch(() => null),
  ]);
  return { usedBytes: estimate?.usage ?? null, isPersistent: isPersistent ?? null };
}

/** Asks the browser not to clear the notebook by itself. @returns whether it agreed */
export async function askToPersist(): Promise<boolean> {
  const storage = (navigator as Partial<Navigator>).storage;
  return (await storage?.persist?.().catch(() => false)) ?? false;
}

/**
 * Erases all that the bench keeps in this browser: notebook, kept sound, choices, and the copy of the site for use
 * without a network. Rejects where the browser refuses.
 */
export async function eraseAll(): Promise<void> {
  await NotebookStore.erase();
  forgetTheme();
  tabMemory.clear();
  const workers = (navigator as Partial<Navigator>).serviceWorker;
  const registration = await workers?.getRegistration();
  const scope = registration?.scope;
  if ('caches' in globalThis && scope !== undefined) {
    const names = (await caches.keys()).filter((name) => name.startsWith(`air-column-bench ${scope} `));
    await Promise.all(names.map((name) => caches.delete(name)));
  }
  await registration?.unregister();
}
