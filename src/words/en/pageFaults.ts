/**
 * What a person is told when something of the page itself has failed. The error's own text is for the browser's
 * console: it would help nobody here.
 */
export const pageFault = {
  /** Something threw while it was done. */
  action:
    'Something on the page has failed: what you just did may not have worked. What you entered before is still there. Try again; if it fails again, save the JSON file under Records and reload the page.',
  /** Something didn't follow a change that was made. */
  follow:
    'A part of the page doesn’t show the last change, but the change is made. Undo takes it back; reloading the page shows it.',
  /** Listening couldn't go on with what was changed. */
  hearing: 'Listening couldn’t follow the last change: stop, and listen again.',
  /** A view's script didn't come. */
  view: 'This view couldn’t be loaded: there is no network, or the site has changed. What you entered is still there; try again, or reload the page.',
};
