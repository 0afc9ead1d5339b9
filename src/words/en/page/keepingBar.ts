import { megabytes } from '../../numbers.ts';
import type { PartedText } from '../../partedText.ts';

export const keepingBar = {
  elsewhere: 'This experiment is open in another tab. Here it is only shown and follows what is done there.',
  workHere: 'Work on it here',
  openCopy: 'Open a copy',
  apart: 'Another tab has changed this experiment meanwhile: what you do here isn’t saved.',
  goOn: 'Go on with a copy',
  useOther: 'Use what the other tab saved',
  refused: (why: string) =>
    `Your work is only in this tab: ${why} You can go on; save the file before you leave.`,
  save: 'Save the file',
  tryAgain: 'Try again',
  sound: (usedBytes: number, limitBytes: number): PartedText => ({
    before: '',
    part: '● Sound is being kept',
    after: ` while you listen: ${megabytes(usedBytes)} of ${megabytes(limitBytes)}`,
  }),
  keepNoMore: 'Keep no more',
  newer: 'A newer version of this bench is ready. It waits until you want it; what you measured stays.',
  newerBusy:
    'A newer version of this bench is ready. Close its other tabs first: they still use the old one.',
  useNewer: 'Use the newer version',
};
