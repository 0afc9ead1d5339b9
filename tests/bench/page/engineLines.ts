import type { EngineFindings } from './engines.ts';

const NAME_WIDTH = 38;
const CELL_WIDTH = 22;
const NOT_TOLD = '–';

/** The engines side by side, a row a quantity. */
export function engineLines(engines: readonly EngineFindings[]): readonly string[] {
  if (engines.length === 0) return [];
  const row = (name: string, cell: (one: EngineFindings) => string): string =>
    `${name.padEnd(NAME_WIDTH)}${engines.map((one) => cell(one).padEnd(CELL_WIDTH)).join('')}`.trimEnd();
  return [
    row('Engines side by side', ({ version }) => version),
    row('Load of the machine, cores', ({ load }) => load.toFixed(1)),
    row('Practice column ready, first', ({ readyMs }) => milliseconds(readyMs.slice(0, 1))),
    row('Practice column ready, later', ({ readyMs }) => milliseconds(readyMs.slice(1))),
    row('Listening, all processes, of a core', ({ cores }) =>
      cores === null ? NOT_TOLD : `${(100 * cores).toFixed(0)} %`,
    ),
    row('Longest pause while listening', ({ longestPauseMs }) => milliseconds([longestPauseMs])),
    row('Flags', ({ flags }) => String(flags.length)),
    row('Flag drawn after its sound', ({ flags }) => milliseconds(flags.map((flag) => flag.paintedMs))),
    row('Memory, all processes', ({ memoryMb }) =>
      memoryMb === null ? NOT_TOLD : `${memoryMb.before.toFixed(0)}, then ${memoryMb.after.toFixed(0)} MB`,
    ),
  ];
}

/** The median, and the most where it differs. */
function milliseconds(values: readonly number[]): string {
  const sorted = [...values].sort((one, other) => one - other);
  const most = sorted.at(-1);
  if (most === undefined) return NOT_TOLD;
  const median = sorted[Math.floor((sorted.length - 1) / 2)] ?? most;
  return sorted.length === 1 ? `${most.toFixed(0)} ms` : `${median.toFixed(0)} ms, most ${most.toFixed(0)}`;
}
