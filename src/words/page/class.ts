import { laterWords } from '../inUse.ts';

/** What became of a group that came by a code. @param groups  in the class now */
export function codeTakenWords(
  { name, as }: { readonly name: string; readonly as: 'new' | 'there' | 'newer' | 'older' },
  groups: number,
): string {
  const said = laterWords.codeTaken;
  return `${said[as](name)} ${said.inTable(groups)}`;
}
