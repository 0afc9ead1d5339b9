/**
 * What a person is told when something of the page itself has failed. The error's own text is for the browser's
 * console: it would help nobody here.
 */
export const pageFault = {
  /** Something threw while it was done. */
  action:
    'Something on the page has failed: what you just did may not have worked. What was entered before is kept. Try again; if it fails again, save the JSON file under Records and load the page anew.',
  /** Something didn't follow a change that was made. */
  follow:
    'A part of the page couldn’t follow the last change; the change itself is made. Undo takes it back, or load the page anew.',
  /** Listening couldn't go on with what was changed. */
  hearing: 'Listening couldn’t follow the last change: stop, and listen again.',
  /** A view's script didn't come. */
  view: 'This view couldn’t be loaded: the network is away, or the site has changed. What you entered is kept; try again, or load the page anew.',
};
