/** Repeatable randomness, so that a practice run and a test can be played again. */
export class SeededRandom {
  private state: number;
  private spare: number | null = null;

  /** @param seed  any integer; its 32 low bits count */
  constructor(seed: number) {
    // An xorshift register must not start at zero; the multiplier spreads neighbouring seeds apart.
    this.state = Math.imul((seed | 0) ^ 0x5bd1e995, 0x2545f491) || 0x1234567;
    for (let i = 0; i < 8; i += 1) this.uniform();
  }

  /** Evenly spread over 0..1 (1 excluded). @see Marsaglia 2003, J. Stat. Softw. 8(14), shifts 13, 17, 5 */
  uniform(): number {
    this.state ^= this.state << 13;
    this.state ^= this.state >>> 17;
    this.state ^= this.state << 5;
    return (this.state >>> 0) / 4_294_967_296;
  }

  /** Evenly spread over low..high. */
  between(low: number, high: number): number {
    return low + (high - low) * this.uniform();
  }

  /** Normally distributed, mean 0, standard deviation 1. @see Box & Muller 1958 */
  normal(): number {
    if (this.spare !== null) {
      const value = this.spare;
      this.spare = null;
      return value;
    }
    const radius = Math.sqrt(-2 * Math.log(1 - this.uniform()));
    const angle = 2 * Math.PI * this.uniform();
    this.spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  }

  /** One of a list that is not empty. */
  pick<T>(list: readonly [T, ...T[]]): T {
    return list[Math.floor(this.uniform() * list.length)] ?? list[0];
  }
}
