/** What a person must know on an iPhone or iPad before the work is gone. */
export const homeScreen = {
  advice:
    'On an iPhone or iPad the browser erases what this page has saved if you don’t open the page for seven days. An app on the home screen isn’t erased like that, but its Records start empty. So first add this page to the home screen (Share, Add to Home Screen), and work there. Save the file of what you have measured here.',
  save: 'Save the file',
  read: 'I have read this',
};
