import { cpuMs } from '../../support/cpuMs.ts';

/** One way of doing a job, with the name it is printed under. */
export interface Contestant {
  readonly name: string;
  readonly run: () => void;
}

/** Rounds until the engine has compiled what it will compile, code that runs a few times a second too: five minutes of sound. */
const WARM_UP_ROUNDS = 14;

/**
 * Median processor time of each contestant, ms, in their order, whatever else the machine does; the engine's own
 * collecting and compiling counts. They take turns, so that what disturbs one disturbs all.
 */
export function timeSideBySide(contestants: readonly Contestant[], rounds: number): number[] {
  const times = contestants.map((): number[] => []);
  for (let round = -WARM_UP_ROUNDS; round < rounds; round += 1) {
    contestants.forEach(({ run }, i) => {
      const start = cpuMs();
      run();
      // The first rounds only warm the compiler up.
      if (round >= 0) times[i]?.push(cpuMs() - start);
    });
  }
  return times.map(median);
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  const upper = sorted[middle] ?? NaN;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? NaN) + upper) / 2;
}

/** Exponent p of time ∝ size^p between the first and the last of some sizes. */
export function growthExponent(sizes: readonly number[], times: readonly number[]): number {
  const ratio = (values: readonly number[]): number => Math.log((values.at(-1) ?? NaN) / (values[0] ?? NaN));
  return ratio(times) / ratio(sizes);
}
