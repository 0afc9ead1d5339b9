/** Seeded random numbers, so that every recording can be made again (mulberry32; common practice, no source). */
export class Random {
  private state: number;

  constructor(seed: number) {
    this.state = seed >>> 0;
    // The first values of neighbouring seeds resemble one another: throw a few away.
    for (let i = 0; i < 8; i += 1) this.next();
  }

  /** Uniform, 0 <= x < 1. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let t = this.state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  }

  uniform(low: number, high: number): number {
    return low + (high - low) * this.next();
  }

  /** Whole number, low..high inclusive. */
  integer(low: number, high: number): number {
    return low + Math.floor(this.next() * (high - low + 1));
  }

  chance(probability: number): boolean {
    return this.next() < probability;
  }

  sign(): 1 | -1 {
    return this.next() < 0.5 ? -1 : 1;
  }

  /** Standard normal (Box and Muller). */
  gauss(): number {
    return Math.sqrt(-2 * Math.log(1 - this.next())) * Math.cos(2 * Math.PI * this.next());
  }

  pick<T>(items: readonly T[]): T {
    const item = items[Math.floor(this.next() * items.length)];
    if (item === undefined) throw new RangeError('items: at least one is needed, got none');
    return item;
  }

  /** A stream of its own, so that a change in one part of a recording leaves the other parts as they were. */
  branch(label: string): Random {
    let hash = this.state ^ 0x9e3779b9;
    for (const character of label) hash = Math.imul(hash ^ character.charCodeAt(0), 0x01000193) >>> 0;
    return new Random(hash);
  }
}

/**
 * Gaussian noise through two equal one-pole low-passes, scaled to the given root mean square.
 * @param rms  >= 0, same unit as the result
 */
export function slowNoise(
  random: Random,
  length: number,
  rateHz: number,
  cornerHz: number,
  rms: number,
): Float64Array {
  const result = new Float64Array(length);
  const step = 1 - Math.exp((-2 * Math.PI * cornerHz) / rateHz);
  let first = 0;
  let second = 0;
  const settle = Math.ceil((3 * rateHz) / (2 * Math.PI * cornerHz));
  for (let i = -settle; i < length; i += 1) {
    first += step * (random.gauss() - first);
    second += step * (first - second);
    if (i >= 0) result[i] = second;
  }
  // Power of two cascaded one-poles fed with unit white noise: s (2 - 2 s + s²) / (2 - s)³.
  const power = (step * (2 - 2 * step + step * step)) / (2 - step) ** 3;
  const scale = rms / Math.sqrt(power);
  for (let i = 0; i < length; i += 1) result[i] *= scale;
  return result;
}
