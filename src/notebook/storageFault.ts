/** Who closed or erased a store that was in use. */
export type Taker = 'another tab' | 'the browser' | 'this tab';

/** Why something wasn't kept. */
export type StorageFault =
  /** `elsewhere`: another tab saved something else in the meantime. */
  | { readonly kind: 'full' | 'refused' | 'elsewhere' }
  /** `by` is null where the browser closed it for now. */
  | { readonly kind: 'gone'; readonly by: Taker | null }
  /** A newer bench's store; the page itself failed while it saved. */
  | { readonly kind: 'broken'; readonly why: 'newer' | 'page' }
  /** `said`: what the browser says of it. */
  | { readonly kind: 'broken'; readonly why: 'unknown'; readonly said: string };

/** A save that would overwrite what another tab saved. */
export class ConflictError extends Error {
  override readonly name = 'ConflictError';
  constructor() {
    super('saved elsewhere');
  }
}

/** A store that was taken away while it was in use. */
export class GoneError extends Error {
  override readonly name = 'GoneError';
  /** @param by  who took it */
  constructor(readonly by: Taker) {
    super(`taken by ${by}`);
  }
}

/** What storage gave, or why it gave nothing. */
export type Asked<T> = { readonly value: T } | { readonly fault: StorageFault };

/** A request of the notebook that storage refused. */
export class StorageError extends Error {
  override readonly name = 'StorageError';
  constructor(readonly fault: StorageFault) {
    super(`storage: ${fault.kind}`);
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

/** Names a failure of the browser's storage. */
export function storageFault(error: unknown): StorageFault {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  const said = error instanceof Error ? error.message : String(error);
  if (error instanceof ConflictError) return { kind: 'elsewhere' };
  if (name === 'QuotaExceededError') return { kind: 'full' };
  if (error instanceof GoneError) return { kind: 'gone', by: error.by };
  if (name === 'InvalidStateError' || name === 'AbortError') return { kind: 'gone', by: null };
  if (name === 'VersionError') return { kind: 'broken', why: 'newer' };
  // Chromium calls it an unknown error, and only its words tell that a setting forbids it.
  if (name === 'SecurityError' || name === 'NotAllowedError' || /denied permission/i.test(said)) {
    return { kind: 'refused' };
  }
  return { kind: 'broken', why: 'unknown', said };
}
