/** Scatter of readings of the same resonances: a Type A evaluation, which no model has a part in. */
export interface Repeatability {
  /** Of one reading. */
  readonly standardDeviationM: number;
  readonly degreesOfFreedom: number;
}

/** A reading that is fitted. */
interface FittedReading {
  readonly lengthM: number;
  /** Number of its setup: fork, place and ends. */
  readonly setup: number;
  readonly order: number;
  /** Rows that are the same in everything, itself among them. */
  readonly copies: number;
}

/**
 * Pooled standard deviation of repeated readings: same fork, place, ends and order.
 * @returns null where nothing was read twice; rows that are copies of one another are one reading
 * @see JCGM 100:2008, 4.2.4 (pooled estimate) and 4.2.2
 * @example
 * const readings = [0.158, 0.16].map((lengthM) => ({ lengthM, setup: 0, order: 1, copies: 1 }));
 * repeatability(readings)?.standardDeviationM.toFixed(5) // → '0.00141'
 */
export function repeatability(readings: readonly FittedReading[]): Repeatability | null {
  const groups = new Map<string, number[]>();
  for (const { setup, order, lengthM, copies } of readings) {
    const name = `${setup} ${order}`;
    const lengths = groups.get(name) ?? [];
    groups.set(name, lengths);
    if (copies === 1 || !lengths.includes(lengthM)) lengths.push(lengthM);
  }
  let squares = 0;
  let degreesOfFreedom = 0;
  for (const lengths of groups.values()) {
    const mean = lengths.reduce((sum, lengthM) => sum + lengthM, 0) / lengths.length;
    squares += lengths.reduce((sum, lengthM) => sum + (lengthM - mean) ** 2, 0);
    degreesOfFreedom += lengths.length - 1;
  }
  return degreesOfFreedom === 0
    ? null
    : { standardDeviationM: Math.sqrt(squares / degreesOfFreedom), degreesOfFreedom };
}
