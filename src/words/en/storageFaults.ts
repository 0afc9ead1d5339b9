/** Why something wasn't saved, and what to do about it. */
export const storageFault = {
  elsewhere: 'Another tab has saved this experiment in the meantime.',
  full: 'The storage that this browser gives the page is full. Erase saved sound (under Records) or free some space, then try again.',
  closed: 'The browser has closed this page’s storage. Try again.',
  /** @see notebook/storageFault.ts for who may have taken it */
  gone: {
    'another tab': 'Another tab has closed or erased what this page had saved.',
    'the browser': 'The browser has closed or erased what this page had saved.',
    'this tab': 'This tab has closed or erased what this page had saved.',
  },
  refused: 'This browser doesn’t let the page save anything: a private window or a setting forbids it.',
  newer: 'A newer version of this page has saved here. Close all its tabs and open it again.',
  page: 'The page itself failed while it was saving.',
  /** @param said  the browser's own word for it, the only clue that there is */
  unknown: (said: string) => `The browser’s storage failed (${said}).`,
};
