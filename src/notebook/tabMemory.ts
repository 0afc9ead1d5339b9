export interface TabMemory {
  get(): string | null;
  set(id: string): void;
  clear(): void;
}

/** Which experiment this tab had open, over a reload; nothing where the browser lets the page keep nothing. */
export function tabMemory(key: string): TabMemory {
  return {
    get() {
      try {
        return sessionStorage.getItem(key);
      } catch {
        return null;
      }
    },
    set(id) {
      try {
        sessionStorage.setItem(key, id);
      } catch {
        // The notebook's own note of what was open last serves as well.
      }
    },
    clear() {
      try {
        sessionStorage.removeItem(key);
      } catch {
        // Nothing was kept.
      }
    },
  };
}
