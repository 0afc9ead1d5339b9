/** Fields that take numbers and texts. */
export const field = {
  length: 'Length',
  centimetres: 'cm',
  changeSign: 'Above or below zero',
  dash: 'Dash: a second length follows',
  take: 'Take it all the same',
  stillWaits: 'Typed before and not taken yet: Enter takes it.',
  forget: 'Forget it',
  tooLong: (characters: number, most: number) =>
    `Nothing was pasted: the field would have ${characters} characters, and ${most} is the most. Paste a shorter text.`,
  workingOut: 'being worked out…',
};
