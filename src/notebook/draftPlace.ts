import type { DraftPlace } from './drafts.ts';

/** Drafts, or a class, in the browser's own storage, which keeps them at once; where it refuses, in this tab's memory. */
export function draftPlace(key: string): DraftPlace & { readonly key: string; clear(): void } {
  let own: string | null = null;
  return {
    key,
    get() {
      try {
        return own ?? localStorage.getItem(key);
      } catch {
        return own;
      }
    },
    set(text) {
      try {
        localStorage.setItem(key, text);
        own = null;
      } catch {
        own = text;
      }
    },
    clear() {
      own = null;
      try {
        localStorage.removeItem(key);
      } catch {
        // Nothing was kept.
      }
    },
  };
}
