/** What a person must know on an iPhone or iPad before the work is gone. */
export const homeScreen = {
  advice:
    'On an iPhone or iPad the browser erases what this page stored once it wasn’t opened for seven days. An app on the home screen isn’t cleared so, but begins with an empty notebook: add this page to the home screen first (Share, Add to Home Screen), and work there. Save the file of what you have measured here.',
  save: 'Save the file',
  read: 'I have read it',
};
