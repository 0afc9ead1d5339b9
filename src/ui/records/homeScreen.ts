import { scopedName, siteScope } from '../../notebook/siteScope.ts';

/** Whether a person has read here that the browser clears what a tab stores. */
export function wasRead(): boolean {
  try {
    return localStorage.getItem(ownKey()) !== null;
  } catch {
    return false;
  }
}

export function noteRead(): void {
  try {
    localStorage.setItem(ownKey(), 'read');
  } catch {
    // Storage is refused: it is said again with the next visit.
  }
}

export function forgetRead(): void {
  try {
    localStorage.removeItem(ownKey());
  } catch {
    // Storage is refused: nothing was remembered.
  }
}

function ownKey(): string {
  return scopedName('home-screen', siteScope());
}
