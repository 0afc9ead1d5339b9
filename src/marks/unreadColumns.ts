import { MARK_COLUMNS, READ_COLUMNS } from './markColumns.ts';
import { shorten } from './parseDecimal.ts';

/** Beginnings of the known columns' names; what begins so and isn't known was likely meant as one. */
const STEMS = /^(dia|mouth|co2|rim|rad|temp|t_c$|hum|rh|press|fork|freq|pitch|end|len|ord|room|lab|excl)/;
/** The same for words further on in a name, where short ones would mislead: inner_diameter_mm, air_temp. */
const LATER_STEMS = /_(diam|radius|temp|humid|press|fork|freq|pitch|ends(_|$)|length|order(_|$)|exclu)/;
/** A name of fewer letters is near too many others. */
const FEWEST_LETTERS = 6;
const MOST_SLIPS = 2;

/**
 * Headings that are not read but look as if they were meant to be: temp_c, inner_diameter_mm, and known names with a
 * slip or two in them, as exluded.
 * @param headings  as they were written
 * @param names  the same as column names
 */
export function unreadColumns(headings: readonly string[], names: readonly string[]): string[] {
  const known: readonly string[] = MARK_COLUMNS.map(({ name }) => name);
  return headings
    .filter((_, i) => {
      const name = names[i] ?? '';
      return !known.includes(name) && (STEMS.test(name) || LATER_STEMS.test(name) || isMisspelt(name));
    })
    .map(shorten);
}

function isMisspelt(name: string): boolean {
  return name.length >= FEWEST_LETTERS && READ_COLUMNS.some((column) => slips(name, column) <= MOST_SLIPS);
}

/** Letters that must be put in, taken out or changed to make one name of the other (Levenshtein 1966). */
function slips(one: string, other: string): number {
  let row = Array.from({ length: other.length + 1 }, (_, j) => j);
  for (let i = 1; i <= one.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= other.length; j += 1) {
      const change = one[i - 1] === other[j - 1] ? 0 : 1;
      next.push(Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, (row[j - 1] ?? 0) + change));
    }
    row = next;
  }
  return row[other.length] ?? 0;
}
