/** Fields that take numbers and texts. */
export const fieldWords = {
  length: 'Length',
  centimetres: 'cm',
  stillWaits: 'Typed before and not taken yet: Enter takes it.',
  forget: 'Forget it',
  tooLong: (characters: number, most: number) =>
    `Nothing was pasted: the field would have ${characters} characters, and ${most} is the most. Paste a shorter text.`,
  workingOut: 'being worked out…',
} as const;

/** Going through a long list. `what` is what it holds, in the plural. */
export const pagesWords = {
  entries: 'entries',
  pages: (what: string) => `Pages of ${what}`,
  previous: 'Previous',
  previousNamed: (what: string) => `Previous ${what}`,
  next: 'Next',
  nextNamed: (what: string) => `Next ${what}`,
  shown: 'Shown',
  which: (what: string) => `Which ${what} are shown`,
  part: (first: number, last: number) => `${first} to ${last}`,
  ofAll: (total: number, what: string) => `of ${total} ${what}`,
} as const;
