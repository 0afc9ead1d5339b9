/**
 * How many times each item of a list is there.
 * @param names  what makes an item the same as another
 * @example
 * copiesOf(['a', 'b', 'a']) // → [2, 1, 2]
 */
export function copiesOf(names: readonly string[]): readonly number[] {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return names.map((name) => counts.get(name) ?? 1);
}
