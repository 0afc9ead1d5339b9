/** Why a lesson link can’t be used, and what to do. */
export const linkFault = {
  damaged: 'This link is damaged. Ask for it again, and copy all of it.',
  newer:
    'This link was made by a newer version of this page. Reload the page while you are online, then open the link again.',
  noInflate: 'This browser is too old to read the link. Use Firefox 113, Safari 16.4, Chrome 80 or later.',
  record: (why: string) => `This lesson link can’t be used: ${why} Ask your teacher to make a new one.`,
};
