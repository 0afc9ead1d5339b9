import { counted } from './grammar.ts';

/** News along the lower edge of the page. Numbers come as they are shown. */
export const notice = {
  undone: (step: string) => `Undone: ${step}.`,
  redone: (step: string) => `Redone: ${step}.`,
  markDeleted: 'Mark deleted. You can bring it back below the list.',
  resonanceFound: (waiting: number) =>
    waiting === 1 ? 'Resonance found: type its length.' : `Resonance found: ${waiting} lengths to type.`,
  resonanceMaybe: (percent: string) =>
    `Perhaps a resonance, ${percent} % sure. Slide through it again, or press K to keep it if you heard it too.`,
  resonanceAgain: (mark: number) => `The same resonance again: counted with mark ${mark}.`,
  resonanceJoined: (mark: number) =>
    `Resonance found: joined with mark ${mark}. If it is another resonance, choose “Separate” in the list of marks.`,
  notMarked:
    'A resonance was heard but not marked: the sound broke off in it. You can still mark it, below “Can the level be trusted?”.',
  gainCheckPassed:
    'Gain check: unchanged. The fork died away smoothly while you talked. Saved with the experiment.',
  gainCheckFailed:
    'Gain check: changed. Something changes the level. Until that is put right, new marks are in doubt.',
  noneInRecording: 'No resonance was found in this recording.',
  foundInRecording: (resonances: number) => `${counted(resonances, 'resonance')} found in the recording.`,
  foundToType: (resonances: number) =>
    `${counted(resonances, 'resonance')} found in the recording. Type the lengths.`,
  maybesInRecording: (resonances: number, maybes: number) =>
    `${counted(resonances, 'resonance')} found in the recording, and ${maybes} more that may be one.`,
  maybesToType: (resonances: number, maybes: number) =>
    `${counted(resonances, 'resonance')} found in the recording, and ${maybes} more that may be one. Type the lengths.`,
  onlyMaybes: (maybes: number) =>
    maybes === 1
      ? 'Nothing in the recording is surely a resonance, but 1 place may be one.'
      : `Nothing in the recording is surely a resonance, but ${maybes} places may be.`,
  recordingHeardAgain: 'The recording is being analysed again, from its beginning, for this fork.',
  strikeVoid: 'That strike was interrupted and doesn’t count: strike the fork again.',
  openElsewhere:
    'This experiment is open in another tab. Work on it here or open a copy: the buttons are at the top of the page.',
  busyElsewhere: 'This experiment is open in another tab: close it there first.',
  takenElsewhere: 'You are working on this experiment in another tab now. This tab only shows it.',
  storeErased:
    'Everything saved in this browser was erased. The open experiment is saved again. Other experiments and saved sound are gone from this device.',
  lastUnreadable: (why: string) =>
    `The last experiment couldn’t be read: ${why} It is saved as it is, under Records.`,
  changesNotSaved: (title: string, why: string) => `The last changes of “${title}” weren’t saved: ${why}`,
  notOpened: (why: string) => `This experiment can’t be opened: ${why}`,
  notDuplicated: (why: string) => `This experiment can’t be copied: ${why}`,
  copyOpen: (title: string) => `You are working on “${title}” now. The original stays in the list.`,
  lessonOpen: 'The lesson is set up. Your experiment from before is saved in the list under Records.',
  lessonAgain:
    'You began this lesson here before: it is open as you left it. For another group choose “New, same apparatus” under Records.',
  /** @param forks  as a list */
  lessonWithout: (forks: string, lowestHz: string, highestHz: string) =>
    `The lesson is set up, but without these forks: ${forks}. This page hears forks from ${lowestHz} to ${highestHz} Hz.`,
  lessonRevealed: (experiments: number) =>
    experiments === 1
      ? '1 experiment of this lesson shows everything now.'
      : `${experiments} experiments of this lesson show everything now.`,
  noSuchCode: 'This code opens no lesson on this device. Type it exactly as your teacher gave it.',
  experimentDeleted: 'Experiment deleted. You can bring it back below the list.',
  soundNowhere: 'Sound can’t be saved: this browser saves nothing for this page now.',
  soundLimit:
    'There is no room for more sound, so saving it has stopped. Save some as files and erase it here (Records).',
  soundStopped: (why: string) => `Saving sound has stopped. ${why}`,
};
