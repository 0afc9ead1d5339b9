import { counted, plural } from '../grammar.ts';

/** What stands around every view: the head of the page and the line along its lower edge. */
export const frame = {
  heading: 'Air Column Bench',
  views: 'Views',
  viewNames: {
    measure: 'Measure',
    apparatus: 'Apparatus',
    check: 'Check',
    working: 'Working',
    compare: 'Compare',
    records: 'Records',
  },
  keys: 'Keys',
  language: 'Language',
  languageNotLoaded:
    'This language couldn’t be loaded, so the page keeps the present one. Try again when you are online.',
  theme: 'Theme',
  themeNames: { system: 'auto', light: 'light', dark: 'dark' },
  drop: 'Drop to open',
  groupsTaken: (count: number) => `${counted(count, 'group')} added to the class view.`,
  close: 'Close',
  doubts: (count: number) => counted(count, 'warning'),
  lengthsToType: (count: number) => `Type ${plural(count, 'a length', `${count} lengths`)}`,
  saved: { nothing: '', saved: 'Saved', saving: 'Saving…', refused: 'Not saved on this device' },
};

/** In place of a part that has failed. */
export const failed = {
  /** @param part  what it is to a person; null before that is known */
  heading: (part: string | null) =>
    part === null ? 'This part of the page has failed.' : `This part of the page has failed: ${part}.`,
  detail:
    'Everything else still works. Try again. If it failed right after your last step, undo that step. You can save the experiment’s file in any case.',
  again: 'Try again',
  undo: 'Undo the last step',
  save: 'Save the experiment’s file',
};
