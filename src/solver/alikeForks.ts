/** A fork as a table names it: by its frequency. */
export interface NamedFork {
  readonly frequencyHz: number;
  readonly standardUncertaintyHz: number;
}

/**
 * Names for the forks of a table: frequencies that differ by less than twice their uncertainty are one fork's, written
 * down in two ways, or none could tell that they aren't; their error is then one error.
 * @returns a name for each fork, in their order
 * @example
 * const stamped = [512, 511.8, 480].map((frequencyHz) => ({ frequencyHz, standardUncertaintyHz: 1.5 }));
 * alikeForks(stamped) // → ['511.8', '511.8', '480']
 */
export function alikeForks(forks: readonly NamedFork[]): readonly string[] {
  const sorted = [...forks].sort((one, other) => one.frequencyHz - other.frequencyHz);
  const names = new Map<number, string>();
  let last: NamedFork | null = null;
  let name = '';
  for (const fork of sorted) {
    const isAlike =
      last !== null &&
      fork.frequencyHz - last.frequencyHz <=
        2 * Math.hypot(fork.standardUncertaintyHz, last.standardUncertaintyHz);
    if (!isAlike) name = String(fork.frequencyHz);
    names.set(fork.frequencyHz, name);
    last = fork;
  }
  return forks.map(({ frequencyHz }) => names.get(frequencyHz) ?? String(frequencyHz));
}
