/** The keys, each with what it does. */
export const keys = {
  heading: 'Keys',
  keys: [
    ['L', 'listen, or stop'],
    ['M', 'make a mark that waits for its length'],
    ['K', 'keep what the bench calls perhaps a resonance, the newest first'],
    ['E', 'go to the newest mark without a length, else to the line that adds one'],
    ['Enter', 'take the typed length and go on to the next mark'],
    ['Esc', 'leave a field, so that these keys work again'],
    ['S', 'practice: strike the fork'],
    ['F', 'practice: fork to the mouth, or away'],
    ['← →', 'slide the column by a millimetre; hold to go on'],
    ['Shift ← →', 'slide it by a fifth of a millimetre'],
    ['Ctrl Z', 'undo'],
    ['Ctrl Y', 'do it again'],
    ['?', 'show these keys'],
  ],
  close: 'Close',
};
