/** Fields that take numbers and texts. */
export const field = {
  length: 'Length',
  centimetres: 'cm',
  changeSign: 'Above or below zero',
  dash: 'Dash, then a second length',
  take: 'Use it anyway',
  stillWaits: 'You typed this before, and it isn’t used yet. Press Enter to use it.',
  forget: 'Clear it',
  tooLong: (characters: number, most: number) =>
    `Not pasted: the field would have ${characters} characters, and can have ${most}. Paste a shorter text.`,
  workingOut: 'calculating…',
};
