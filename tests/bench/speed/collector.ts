import { PerformanceObserver } from 'node:perf_hooks';
import { setImmediate } from 'node:timers/promises';
import { cpuMs } from '../../support/cpuMs.ts';

/** What the engine's garbage collector takes. */
export interface CollectorWork {
  /** Of the job's processor time. */
  readonly share: number;
  readonly longestPauseMs: number;
}

/**
 * The collector's work in the quietest of some rounds: pauses are told by the clock, so what else the machine does
 * lengthens them. A round must be long enough to fill the young generation many times.
 */
export async function collectorWork(job: () => void, rounds: number): Promise<CollectorWork> {
  const observer = new PerformanceObserver(() => undefined);
  observer.observe({ entryTypes: ['gc'] });
  const pausesMs = async (): Promise<number[]> => {
    // The entries come with the next turn of the event loop.
    await setImmediate();
    return observer.takeRecords().map(({ duration }) => duration);
  };
  const all: CollectorWork[] = [];
  for (let round = 0; round < rounds; round += 1) {
    await pausesMs();
    const start = cpuMs();
    job();
    const jobMs = cpuMs() - start;
    const pauses = await pausesMs();
    if (pauses.length === 0) throw new Error('The round was too short: the collector did not run.');
    const totalMs = pauses.reduce((sum, ms) => sum + ms, 0);
    all.push({ share: totalMs / jobMs, longestPauseMs: Math.max(...pauses) });
  }
  observer.disconnect();
  return {
    share: Math.min(...all.map(({ share }) => share)),
    longestPauseMs: Math.min(...all.map(({ longestPauseMs }) => longestPauseMs)),
  };
}
