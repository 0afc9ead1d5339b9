const KEY = 'open-experiment';

/** Which experiment this tab had open, over a reload; nothing where the browser lets the page keep nothing. */
export const tabMemory = {
  get(): string | null {
    try {
      return sessionStorage.getItem(KEY);
    } catch {
      return null;
    }
  },
  set(id: string): void {
    try {
      sessionStorage.setItem(KEY, id);
    } catch {
      // The notebook's own note of what was open last serves as well.
    }
  },
  clear(): void {
    try {
      sessionStorage.removeItem(KEY);
    } catch {
      // Nothing was kept.
    }
  },
};
