import type { Limit } from '../limits/limits.ts';

/** What a field of a record must be. */
export type FieldRule =
  | { readonly kind: 'object' | 'whole-number' | 'flag' }
  /** At most so many characters of a text, or items of a list. */
  | { readonly kind: 'text' | 'list'; readonly longest: number }
  | { readonly kind: 'number'; readonly limit: Limit }
  | { readonly kind: 'choice'; readonly choices: readonly string[] }
  /** A reading from which the rule's zero offset leaves a column, m. */
  | { readonly kind: 'reading'; readonly zeroOffsetM: number };

/** What is wrong with a record. */
export type RecordFault =
  | {
      readonly code: 'field';
      /** As in marks[3].lengthM. */
      readonly path: string;
      readonly rule: FieldRule;
      /** As it stands in the record; undefined where it is missing. */
      readonly found: unknown;
    }
  /** Two lists of a trace have different lengths. */
  | { readonly code: 'unequal-lists'; readonly path: string; readonly lists: readonly [string, string] }
  | { readonly code: 'same-id'; readonly list: 'forks' | 'places' | 'marks' }
  /** A mark, or what is measured now (null), is of a fork or place that isn't there. */
  | {
      readonly code: 'dangling';
      readonly markId: string | null;
      readonly to: 'fork' | 'place';
      readonly id: string;
    }
  | { readonly code: 'no-object' }
  | { readonly code: 'newer-version'; readonly version: number; readonly newest: number }
  | { readonly code: 'no-version'; readonly found: unknown; readonly newest: number }
  /** Its reader itself can't take it; `said` is the engine's word for it. */
  | { readonly code: 'unreadable'; readonly said: string };
