import type { StorageFault, Taker } from '../notebook/storageFault.ts';

const TAKERS: Readonly<Record<Taker, string>> = {
  'another tab': 'Another tab',
  'the browser': 'The browser',
  'this tab': 'This tab',
};

/** Why something wasn’t kept, and what to do about it. */
export function storageFaultWords(fault: StorageFault): string {
  switch (fault.kind) {
    case 'elsewhere':
      return 'Another tab has saved this experiment since.';
    case 'full':
      return 'The storage that this browser gives the page is full. Erase kept sound (under Records) or free space, then try again.';
    case 'gone':
      return fault.by === null
        ? 'The browser has closed this page’s storage. Try again.'
        : `${TAKERS[fault.by]} has closed or erased what is stored for this page.`;
    case 'refused':
      return 'This browser lets the page store nothing: a private window or a setting forbids it.';
    case 'broken':
      return brokenWords(fault);
  }
}

function brokenWords(fault: Extract<StorageFault, { kind: 'broken' }>): string {
  switch (fault.why) {
    case 'newer':
      return 'A newer version of this bench keeps the notebook here. Close all its tabs and open it anew.';
    case 'page':
      return 'The page itself has failed while it saved.';
    case 'unknown':
      return `The browser’s storage failed (${fault.said}).`;
  }
}
