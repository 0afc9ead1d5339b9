/**
 * Where this copy of the site lies on its host: a path with a slash at both ends. A host may hold several copies, and
 * the browser gives all of them one storage: whatever the bench keeps there bears the path of the copy that kept it.
 */
export function siteScope(): string {
  return new URL('.', document.baseURI).pathname;
}

/** A name in the browser's storage that is this copy's own. */
export function scopedName(name: string, scope: string): string {
  return `${name} ${scope}`;
}
