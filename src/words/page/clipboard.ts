/** Said where a table can't be put on the clipboard. */
export const NOT_COPIED = 'The browser didn’t allow copying. Save the CSV file instead.';
