import { megabytes } from '../../numbers.ts';

export const intakePage = {
  heading: 'What came in',
  files: 'Files',
  toClass: 'Take into the class view',
  add: 'Add to this experiment',
  openOne: 'Open as a new experiment',
  openEach: 'Open each as an experiment',
  listen: 'Listen to the recordings',
  cancel: 'Cancel',
  close: 'Close, nothing changes',
  tooMany: (files: number, most: number) => `${files} files at once are too many: ${most} are possible.`,
  tooLarge: (mostBytes: number) =>
    `These files are more than ${megabytes(mostBytes)} together: open them in parts.`,
  opened: (title: string) => `“${title}” is open. What was open before is in the list, or a step back.`,
  /** After a person chose to stay with what is open. @param files  that were to be opened, more than one */
  leftClosed: (files: number) => `${files} files were not opened.`,
};
