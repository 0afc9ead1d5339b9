export const lesson = {
  heading: 'Lesson link',
  lead: 'For teachers: forks, tube, rule, places and column as they are set now, as a link for the class. It holds no marks and no names.',
  task: 'What to measure',
  language: 'Language of the task (en, de, fr …)',
  hideExpected: 'Hide where resonances are expected',
  hideTheory: 'Hide theory’s speed',
  hideTruth: 'Hide the practice column’s truth',
  apart:
    'The last two are separate: with theory hidden, “Show the truth” still gives the speed of sound away to whoever practises. Tick both to keep it back everywhere.',
  limits:
    'What can’t be hidden: what students work out themselves or look up, the bench opened without this link, and the program’s source. Hiding keeps the answer out of sight; it is no lock.',
  make: 'Make the link',
  link: 'Link',
  copy: 'Copy the link',
  code: 'Show it as a QR code',
  codeName: 'the lesson',
  tooLongForCode: 'The link is too long for a code that a camera reads: shorten the task, or send the link.',
  reveal: 'When it is time, this shows the class what was kept back',
  revealCode: 'Code to call out; students type it under Records',
  revealLink: 'Address for the same',
  copyReveal: 'Copy the link that shows it',
  showRevealCode: 'Show that link as a QR code',
  revealName: 'what the lesson kept back',
  copied: 'The link was copied.',
  notCopied: 'The browser didn’t allow copying: mark the link and copy it by hand.',
};

export const keptBack = {
  heading: 'What this lesson keeps back',
  code: 'Code from the teacher',
  show: 'Show it',
  noCode: 'This lesson was made without a code that would show it.',
};
