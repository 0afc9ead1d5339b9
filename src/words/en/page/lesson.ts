export const lesson = {
  heading: 'Lesson link',
  lead: 'For teachers: a link for the class with the forks, tube, rule, places and column as they are set now. It holds no marks and no names.',
  task: 'What to measure',
  language: 'Language of the task (en, de, fr …)',
  hideExpected: 'Hide where resonances are expected',
  hideTheory: 'Hide the predicted speed',
  hideTruth: 'Hide the practice column’s true values',
  apart:
    'The last two are separate. With only the prediction hidden, “Show the true values” still gives the speed of sound away to anyone who practises. Tick both to hide it everywhere.',
  limits:
    'What can’t be hidden: what students work out themselves or look up, this page opened without the link, and the program’s source. Hiding keeps the answer out of sight; it is no lock.',
  make: 'Make the link',
  link: 'Link',
  copy: 'Copy the link',
  code: 'Show it as a QR code',
  codeName: 'the lesson',
  tooLongForCode: 'The link is too long for a QR code. Shorten the task, or send the link.',
  reveal: 'When it is time, show the class what was hidden',
  revealCode: 'Code to call out; students type it under Records',
  revealLink: 'Link that does the same',
  copyReveal: 'Copy the link that shows it',
  showRevealCode: 'Show that link as a QR code',
  revealName: 'what the lesson hides',
  copied: 'The link was copied.',
  notCopied: 'The browser didn’t allow copying. Select the link and copy it by hand.',
};

export const keptBack = {
  heading: 'What this lesson hides',
  until: (list: string) => `Hidden until your teacher shows it: ${list}.`,
  expected: 'where resonances are expected',
  theory: 'the predicted speed of sound',
  truth: 'the true values of the practice column',
  code: 'Code from the teacher',
  show: 'Show it',
  noCode: 'This lesson has no code that would show it.',
};
