import { solveInFull } from '../../solver/solve.ts';
import type { FullSolution } from '../../solver/solve.ts';
import type { NoSolution, SolverMark } from '../../solver/solution.ts';
import type { GroupBy } from './countedGroups.ts';

interface KeptGroup {
  readonly marks: readonly SolverMark[];
  readonly solved: FullSolution | NoSolution;
}

/** What was solved, group by group, so that a change solves its own group anew and no other. */
export class SolvedGroups {
  private readonly kept = new Map<GroupBy, Map<string, KeptGroup>>();

  /** A group's solution: the one from before where its marks are the same. @param id  as in `countedGroups` */
  solve(by: GroupBy, id: string, marks: readonly SolverMark[]): FullSolution | NoSolution {
    const groups = this.kept.get(by) ?? new Map<string, KeptGroup>();
    this.kept.set(by, groups);
    const known = groups.get(id);
    if (known !== undefined && areSame(known.marks, marks)) return known.solved;
    const solved = solveInFull(marks);
    groups.set(id, { marks, solved });
    return solved;
  }

  /** Forgets all groups but these. @param ids  has the groups that there still are */
  keepOnly(by: GroupBy, ids: { has(id: string): boolean }): void {
    const groups = this.kept.get(by);
    for (const id of [...(groups?.keys() ?? [])]) if (!ids.has(id)) groups?.delete(id);
  }
}

function areSame(before: readonly SolverMark[], now: readonly SolverMark[]): boolean {
  return before.length === now.length && before.every((mark, i) => isSame(mark, now[i]));
}

/** Whether two marks mean the same to the solver. */
function isSame(before: SolverMark, now: SolverMark | undefined): boolean {
  if (now === undefined) return false;
  const names = Object.keys({ ...before, ...now }) as (keyof SolverMark)[];
  return names.every(
    (name) => before[name] === now[name] || (name === 'air' && isSameAir(before.air, now.air)),
  );
}

function isSameAir(before: SolverMark['air'], now: SolverMark['air']): boolean {
  if (before === null || now === null) return before === now;
  const names = Object.keys(before) as (keyof typeof before)[];
  return names.every((name) => before[name] === now[name]);
}
