import type { Experiment } from '../../notebook/experiment.ts';
import { compareSolved } from '../../solver/compare.ts';
import type { Comparison, NoComparison, SolvedGroup } from '../../solver/compare.ts';
import { countedGroups } from './countedGroups.ts';
import type { GroupBy } from './countedGroups.ts';
import { SolvedGroups } from './solvedGroups.ts';

/** Up to so many groups every pair is compared; six make fifteen pairs, which still can be read. */
export const MOST_FOR_ALL_PAIRS = 6;
/** Of more groups one is set against the others, so many at a time. */
export const PAIRS_AT_A_TIME = 20;

/** What is to be set against each other. */
export interface CompareAsk {
  readonly by: GroupBy;
  /** Where there are too many groups for all pairs, the one that is set against the others; null: the first. */
  readonly oneId: string | null;
  /** Number of pairs that are passed over, >= 0. */
  readonly from: number;
}

/** Groups of marks and what sets them apart. */
export interface CompareFindings {
  readonly by: GroupBy;
  /** The groups' ids, in the order in which their first marks were made. */
  readonly groupIds: readonly string[];
  /** The group that is set against the others; null where every pair is compared. */
  readonly oneId: string | null;
  /** Pairs that can be paged through. */
  readonly pairCount: number;
  /** Number of pairs before these. */
  readonly from: number;
  readonly pairs: readonly (Comparison | NoComparison)[];
}

/**
 * Compares groups of marks with the errors that they have in common: every pair of a few groups; of many one group with
 * the others, some at a time.
 * @param known  what was solved before
 */
export function compareGroups(
  experiment: Experiment,
  ask: CompareAsk,
  known = new SolvedGroups(),
): CompareFindings {
  const { by } = ask;
  const marks = countedGroups(experiment, by);
  known.keepOnly(by, marks);
  const groupIds = [...marks.keys()];
  const isAll = groupIds.length <= MOST_FOR_ALL_PAIRS;
  const oneId = groupIds.find((id) => id === ask.oneId) ?? groupIds.at(0);
  const all = isAll
    ? groupIds.flatMap((first, index) => groupIds.slice(index + 1).map((second) => [first, second] as const))
    : groupIds.flatMap((other) => (oneId === undefined || other === oneId ? [] : [[oneId, other] as const]));
  const from = isAll || !(ask.from < all.length) ? 0 : ask.from;
  const solved = (id: string): SolvedGroup => ({
    key: id,
    solved: known.solve(by, id, marks.get(id) ?? []),
  });
  return {
    by,
    groupIds,
    oneId: isAll ? null : (oneId ?? null),
    pairCount: all.length,
    from,
    pairs: all
      .slice(from, isAll ? undefined : from + PAIRS_AT_A_TIME)
      .map(([first, second]) => compareSolved(solved(first), solved(second))),
  };
}
