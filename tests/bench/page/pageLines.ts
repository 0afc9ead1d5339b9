import { engineLines } from './engineLines.ts';
import type { EngineFindings } from './engines.ts';
import type { FirstLoad } from './firstLoad.ts';
import type { FlagDelay } from './flagDelay.ts';
import type { HeapUse } from './heapGrowth.ts';
import type { MainThread } from './mainThread.ts';
import type { ReadyTime } from './readyTime.ts';

/** Everything that one run found. */
export interface PageFindings {
  readonly load: FirstLoad;
  readonly cold: ReadyTime;
  readonly fromWorker: ReadyTime;
  readonly mainThread: MainThread;
  readonly flags: readonly FlagDelay[];
  readonly heap: readonly HeapUse[];
  readonly engines: readonly EngineFindings[];
  /** Errors of the page; a goal is that there are none. */
  readonly faults: readonly string[];
  /** One-minute load averages: above the number of cores, times by the clock say little. */
  readonly machine: { readonly cores: number; readonly loadBefore: number; readonly loadAfter: number };
}

/** What the page sets itself: share of a core, ms, bytes. */
const GOALS = { busyShare: 0.15, longestTaskMs: 50, scriptBytes: 130_000, flagDelayMs: 60 } as const;

/** The findings as lines to read, with goals met and missed. */
export function pageLines(found: PageFindings): readonly string[] {
  const { load, mainThread, flags, machine } = found;
  const painted = flags.map((flag) => flag.paintedMs);
  return [
    line(
      'Load of the machine, cores',
      `${machine.loadBefore.toFixed(1)} before, ${machine.loadAfter.toFixed(1)} after, ${machine.cores} cores`,
    ),
    line('First load, script', kilobytes(load.scriptBytes), load.scriptBytes <= GOALS.scriptBytes),
    line('  with what listening adds', kilobytes(load.listeningScriptBytes)),
    line('First load, page and style', kilobytes(load.otherBytes)),
    readyLine('Practice column ready, first visit', found.cold),
    readyLine('Practice column ready, from worker', found.fromWorker),
    line('From Listen to “strike the fork”', `${load.listeningMs.toFixed(0)} ms`),
    `Microphone and strip, ${mainThread.durationS} s:`,
    line(
      '  Main thread busy, processor time',
      `${(100 * mainThread.busyShare).toFixed(1)} %`,
      mainThread.busyShare <= GOALS.busyShare,
    ),
    line(
      '  Longest task, processor time',
      `${mainThread.longestCpuMs.toFixed(1)} ms`,
      mainThread.longestCpuMs <= GOALS.longestTaskMs,
    ),
    line('  Longest task, by the clock', `${mainThread.longestTaskMs.toFixed(1)} ms`),
    line('  Tasks over 50 ms by the clock', String(mainThread.tasksOver50Ms)),
    line('  Resonances flagged meanwhile', String(flags.length), flags.length > 0),
    ...(flags.length === 0
      ? []
      : [
          line('  Flag in the DOM after its sound', `${spread(flags.map((flag) => flag.domMs))} ms`),
          line('  Flag drawn after its sound', `${spread(painted)} ms`, median(painted) <= GOALS.flagDelayMs),
          line('  (a batch of sound lasts', `${(flags[0]?.batchMs ?? 0).toFixed(0)} ms)`),
        ]),
    ...mainThread.functions.map(({ name, ms }) => `${ms.toFixed(0).padStart(8)} ms  ${name}`),
    ...found.heap.map(({ minutes, heapMb, buffersMb, marks }) =>
      line(
        `Memory after ${minutes} min of sound`,
        `${heapMb.toFixed(1)} MB of objects, ${buffersMb.toFixed(1)} MB of buffers, ${marks} marks`,
      ),
    ),
    ...engineLines(found.engines),
    ...(found.faults.length === 0 ? [] : [line('Errors', found.faults.join('; '), false)]),
  ];
}

function readyLine(name: string, { clockMs, cpuMs }: ReadyTime): string {
  return line(
    name,
    `${median(clockMs).toFixed(0)} ms, median of ${clockMs.length} (processor ${median(cpuMs).toFixed(0)} ms)`,
  );
}

function spread(values: readonly number[]): string {
  return `${median(values).toFixed(0)} median, ${Math.max(...values).toFixed(0)} most`;
}

/** @param values  at least one */
function median(values: readonly number[]): number {
  const sorted = [...values].sort((one, other) => one - other);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle] ?? NaN;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? NaN) + upper) / 2;
}

function kilobytes(bytes: number): string {
  return `${(bytes / 1000).toFixed(1)} kB gzip`;
}

function line(name: string, value: string, isMet?: boolean): string {
  const verdict = isMet === undefined ? '' : isMet ? '  goal met' : '  GOAL MISSED';
  return `${name.padEnd(36)} ${value}${verdict}`;
}
