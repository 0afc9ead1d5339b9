import { counted } from '../en/grammar.ts';

export const notACode = 'This code holds no group’s result.';

/** What became of a group that came by a code. @param groups  in the class now */
export function codeTakenWords(
  { name, as }: { readonly name: string; readonly as: 'new' | 'there' | 'newer' | 'older' },
  groups: number,
): string {
  const called = `“${name}”`;
  const all = `${counted(groups, 'row')} in the class.`;
  switch (as) {
    case 'new':
      return `${called} is taken in; ${all}`;
    case 'there':
      return `${called} is here already, just so; ${all}`;
    case 'newer':
      return `${called} came again, changed: the newer one counts; ${all}`;
    case 'older':
      return `${called} is here already, and what came is older or the same: it doesn’t count; ${all}`;
  }
}

/** One of several codes is in. */
export function partTakenWords(have: number, of: number): string {
  return `${have} of ${of} codes of this group are in: show the next one.`;
}
