import { laterWords } from '../inUse.ts';

/** What an element of the page is to a person. @param tag  its name, as `localName` gives it */
export function partName(tag: string): string {
  const names: Readonly<Record<string, string>> = laterWords.partNames;
  return names[tag] ?? tag;
}
