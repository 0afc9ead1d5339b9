import { readdirSync, readFileSync } from 'node:fs';

/** What a process and all that it started use, as Linux counts it. */
export interface TreeUse {
  /** Processor time so far, s; of processes that have ended nothing is known. */
  readonly cpuS: number;
  /** Memory, each shared page divided by those who share it, MB. */
  readonly memoryMb: number;
}

/** Ticks a second in /proc, which the kernel has fixed for programs. */
const TICKS_A_SECOND = 100;

/** @returns null where the system has no such accounts */
export function treeUse(processId: number): TreeUse | null {
  const parents = new Map<number, number>();
  const cpuS = new Map<number, number>();
  try {
    for (const name of readdirSync('/proc').filter((entry) => /^\d+$/.test(entry))) {
      const fields = statOf(name);
      if (fields === null) continue;
      // Counted from the field after the name: state, parent, … user and system time at 11 and 12.
      parents.set(Number(name), Number(fields[1]));
      cpuS.set(Number(name), (Number(fields[11]) + Number(fields[12])) / TICKS_A_SECOND);
    }
  } catch {
    return null;
  }
  const tree = [...parents.keys()].filter((id) => isIn(id, processId, parents));
  return {
    cpuS: tree.reduce((sum, id) => sum + (cpuS.get(id) ?? 0), 0),
    memoryMb: tree.reduce((sum, id) => sum + memoryOf(id), 0),
  };
}

function isIn(id: number, root: number, parents: ReadonlyMap<number, number>): boolean {
  for (let at = id; at > 1; at = parents.get(at) ?? 0) if (at === root) return true;
  return false;
}

function statOf(name: string): string[] | null {
  try {
    const text = readFileSync(`/proc/${name}/stat`, 'utf8');
    // The name stands in brackets and may hold anything.
    return text.slice(text.lastIndexOf(')') + 2).split(' ');
  } catch {
    // It has ended meanwhile.
    return null;
  }
}

function memoryOf(id: number): number {
  try {
    const kilobytes = /^Pss:\s+(\d+) kB/m.exec(readFileSync(`/proc/${id}/smaps_rollup`, 'utf8'))?.[1];
    return Number(kilobytes ?? 0) / 1024;
  } catch {
    return 0;
  }
}
