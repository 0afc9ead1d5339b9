import { shorten } from './parseDecimal.ts';

/** What a cell says that holds one of several names, in any spelling of case, blanks, dashes and underscores. */
export type NameCell<Name extends string> =
  | { readonly kind: 'name'; readonly name: Name }
  | { readonly kind: 'empty' }
  | { readonly kind: 'unknown'; readonly typed: string };

/** @param names  in small letters, with a dash between words */
export function parseName<Name extends string>(text: string, names: readonly Name[]): NameCell<Name> {
  const word = text
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, '-');
  if (word === '') return { kind: 'empty' };
  const name = names.find((one) => one === word);
  return name === undefined ? { kind: 'unknown', typed: shorten(text) } : { kind: 'name', name };
}
