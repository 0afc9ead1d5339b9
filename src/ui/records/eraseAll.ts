import { NotebookStore } from '../../notebook/notebookStore.ts';
import { siteScope } from '../../notebook/siteScope.ts';
import { siteStorage } from '../../notebook/siteStorage.ts';
import { forgetLanguage } from '../languageChoice.ts';
import { forgetTheme } from '../themeChoice.ts';
import { forgetCsvForm } from './csvChoice.ts';
import { forgetRead } from './homeScreen.ts';

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
 * Erases all that this copy of the bench keeps in this browser: notebook, kept sound, choices, and the copy of the site for use
 * without a network. Rejects where the browser refuses.
 */
export async function eraseAll(): Promise<void> {
  const scope = siteScope();
  await NotebookStore.erase(scope);
  forgetTheme();
  forgetLanguage();
  forgetRead();
  forgetCsvForm();
  const { tabMemory, draftPlace, classPlace } = siteStorage(scope);
  tabMemory.clear();
  draftPlace.clear();
  classPlace.clear();
  const workers = (navigator as Partial<Navigator>).serviceWorker;
  const registration = await workers?.getRegistration();
  // Without a worker of its own this copy may be served by that of a copy above it.
  if (registration === undefined || new URL(registration.scope).pathname !== scope) return;
  if ('caches' in globalThis) {
    const own = `air-column-bench ${registration.scope} `;
    const names = (await caches.keys()).filter((name) => name.startsWith(own));
    await Promise.all(names.map((name) => caches.delete(name)));
  }
  await registration.unregister();
}
