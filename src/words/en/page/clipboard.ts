export const clipboard = {
  /** A table can't be put on the clipboard. */
  notCopied: 'The browser didn’t allow copying. Save the CSV file instead.',
};
