import type { PartedText } from '../../partedText.ts';

export const keepingBar = {
  elsewhere: 'This experiment is open in another tab. This tab only shows it, and follows the other one.',
  workHere: 'Work on it here',
  openCopy: 'Open a copy',
  apart: 'This experiment was changed in another tab. Changes you make here won’t be saved.',
  goOn: 'Go on with a copy',
  useOther: 'Use what the other tab saved',
  refused: (why: string) =>
    `Your work is only in this tab: ${why} You can go on. Save the file before you leave.`,
  save: 'Save the file',
  tryAgain: 'Try again',
  sound: (used: string, limit: string): PartedText => ({
    before: '',
    part: '● Sound is being saved',
    after: ` while you listen: ${used} of ${limit}`,
  }),
  stopSaving: 'Stop saving sound',
  newer: 'A newer version of this page is ready. Update when you like; your measurements are saved.',
  newerBusy: 'A newer version of this page is ready. Close its other tabs first: they still use the old one.',
  useNewer: 'Update now',
};
