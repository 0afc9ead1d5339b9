/** What is asked before another experiment takes the place of one that couldn't be saved. */
export const leaving = {
  heading: (title: string) => `Leave “${title}” without saving it?`,
  message:
    'What you entered is in this tab only. When another experiment takes its place it is gone, unless you save its file first.',
  /** @param why  what the storage said, a whole sentence */
  messageWith: (why: string) =>
    `What you entered is in this tab only: ${why} When another experiment takes its place it is gone, unless you save its file first.`,
  no: 'Stay with it',
  saveFirst: 'Save the file, then go on',
  yes: 'Go on without it',
};
