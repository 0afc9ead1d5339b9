/**
 * Whether the page stands in a tab of an iPhone or iPad: what it stores is cleared there after seven days without a
 * visit, and an app on the home screen has a storage of its own, which begins empty. Only they know `standalone`.
 */
export function isClearedTab(browser: object = navigator): boolean {
  return 'standalone' in browser && browser.standalone === false;
}
