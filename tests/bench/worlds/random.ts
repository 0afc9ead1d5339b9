/** Random numbers from a seed, the same on every machine. */
export interface Random {
  /** 0..1. */
  uniform(): number;
  between(low: number, high: number): number;
  /** A normal deviate (Box & Muller 1958). */
  normal(): number;
  /** One of the list's entries. */
  oneOf<T>(list: readonly T[]): T;
  shuffled<T>(list: readonly T[]): T[];
}

/** @param seed  any whole number; mulberry32, public domain */
export function seeded(seed: number): Random {
  let state = seed >>> 0;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  return {
    uniform,
    between: (low, high) => low + (high - low) * uniform(),
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
    oneOf: (list) => list[Math.floor(uniform() * list.length)],
    shuffled: (list) =>
      list
        .map((entry) => ({ entry, at: uniform() }))
        .sort((one, other) => one.at - other.at)
        .map(({ entry }) => entry),
  };
}
