import { laterWords } from './inUse.ts';

/** A group as it is called; one that came by a code may have given itself no name. */
export function groupNameWords(group: string): string {
  return group.trim() === '' ? laterWords.namelessGroup : group.trim();
}
