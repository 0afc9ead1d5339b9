/** Why something wasn't kept, and what the person can do about it. */
export interface StorageFault {
  /** `elsewhere`: another tab saved something else in the meantime. */
  readonly kind: 'full' | 'refused' | 'gone' | 'elsewhere' | 'broken';
  /** Whole sentences. */
  readonly message: string;
}

/** A save that would overwrite what another tab saved. */
export class ConflictError extends Error {
  override readonly name = 'ConflictError';
  constructor() {
    super('Another tab has saved this experiment since.');
  }
}

/** A store that was taken away while it was in use. */
export class GoneError extends Error {
  override readonly name = 'GoneError';
  /** @param by  who took it, in words */
  constructor(by: string) {
    super(`${by} has closed or erased what is stored for this page.`);
  }
}

/** What storage gave, or why it gave nothing. */
export type Asked<T> = { readonly value: T } | { readonly fault: StorageFault };

/** A request of the notebook that storage refused; its message is for the person. */
export class StorageError extends Error {
  override readonly name = 'StorageError';
  constructor(readonly fault: StorageFault) {
    super(fault.message);
  }
}

/**
 * Asks storage for something and nothing else: what fails here is storage, what fails around it is the page.
 * @param request  touches only the store
 */
export async function askStorage<T>(request: () => Promise<T>): Promise<Asked<T>> {
  try {
    return { value: await request() };
  } catch (error) {
    return { fault: storageFault(error) };
  }
}

/** Puts a failure of the browser's storage into words. */
export function storageFault(error: unknown): StorageFault {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  const detail = error instanceof Error ? error.message : String(error);
  if (error instanceof ConflictError) return { kind: 'elsewhere', message: detail };
  if (name === 'QuotaExceededError') {
    return {
      kind: 'full',
      message:
        'The storage that this browser gives the page is full. Erase kept sound (under Records) or free space, then try again.',
    };
  }
  if (error instanceof GoneError) {
    return { kind: 'gone', message: detail.charAt(0).toUpperCase() + detail.slice(1) };
  }
  if (name === 'InvalidStateError' || name === 'AbortError') {
    return { kind: 'gone', message: 'The browser has closed this page’s storage. Try again.' };
  }
  if (name === 'VersionError') {
    return {
      kind: 'broken',
      message: 'A newer version of this bench keeps the notebook here. Close all its tabs and open it anew.',
    };
  }
  // Chromium calls it an unknown error, and only its words tell that a setting forbids it.
  if (name === 'SecurityError' || name === 'NotAllowedError' || /denied permission/i.test(detail)) {
    return {
      kind: 'refused',
      message: 'This browser lets the page store nothing: a private window or a setting forbids it.',
    };
  }
  return { kind: 'broken', message: `The browser’s storage failed (${detail}).` };
}
