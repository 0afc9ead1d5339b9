/** The keys, each with what it does. */
export const keys = {
  heading: 'Keys',
  keys: [
    ['L', 'listen, or stop'],
    ['M', 'make a mark, to type its length later'],
    ['K', 'keep what is perhaps a resonance, the newest first'],
    ['E', 'go to the newest mark without a length; if there is none, to the field that adds a mark'],
    ['Enter', 'use the typed length and go to the next mark'],
    ['Esc', 'leave a field, so that these keys work again'],
    ['S', 'practice: strike the fork'],
    ['F', 'practice: move the fork to the mouth, or away'],
    ['← →', 'change the length by 1 mm; hold the key to keep sliding'],
    ['Shift ← →', 'change the length by 0.2 mm'],
    ['Ctrl Z', 'undo'],
    ['Ctrl Y', 'redo'],
    ['?', 'show these keys'],
  ],
  close: 'Close',
};
