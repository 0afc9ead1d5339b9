import type * as first from './en/first.ts';
import type * as later from './en/later.ts';

/** English, with any text in place of its own: what each language must have, and no more. */
type InAnyLanguage<T> = T extends string
  ? string
  : T extends (...values: infer Values) => infer Said
    ? (...values: Values) => InAnyLanguage<Said>
    : T extends object
      ? { readonly [Key in keyof T]: InAnyLanguage<T[Key]> }
      : T;

/** The texts that the page has from its start. */
export type FirstWords = InAnyLanguage<typeof first>;

/** The texts that come with the views that are opened later. */
export type LaterWords = InAnyLanguage<typeof later>;
