import type { Experiment } from '../notebook/experiment.ts';
import { placeLabels } from '../report/marksCsv.ts';
import { fixed } from '../report/rounding.ts';
import { compareSolved } from '../solver/compare.ts';
import type { Comparison, NoComparison } from '../solver/compare.ts';
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
  /** In the order in which their first marks were made. */
  readonly groups: readonly { readonly id: string; readonly name: string }[];
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
  const nameOf = namesOfGroups(experiment, by);
  const groups = [...marks.keys()].map((id) => ({ id, name: nameOf(id) }));
  const isAll = groups.length <= MOST_FOR_ALL_PAIRS;
  const one = groups.find(({ id }) => id === ask.oneId) ?? groups.at(0);
  const all = isAll
    ? groups.flatMap((first, index) => groups.slice(index + 1).map((second) => [first, second] as const))
    : groups.flatMap((other) => (one === undefined || other === one ? [] : [[one, other] as const]));
  const from = isAll || !(ask.from < all.length) ? 0 : ask.from;
  const solved = ({ id, name }: (typeof groups)[number]) => ({
    name,
    solved: known.solve(by, id, marks.get(id) ?? []),
  });
  return {
    by,
    groups,
    oneId: isAll ? null : (one?.id ?? null),
    pairCount: all.length,
    from,
    pairs: all
      .slice(from, isAll ? undefined : from + PAIRS_AT_A_TIME)
      .map(([first, second]) => compareSolved(solved(first), solved(second))),
  };
}

function namesOfGroups(experiment: Experiment, by: GroupBy): (id: string) => string {
  if (by === 'ends') return (id) => (id === 'closed' ? 'the closed column' : 'the open column');
  if (by === 'place') {
    const labels = placeLabels(experiment);
    return (id) => labels.get(id) ?? '';
  }
  const forks = new Map(experiment.forks.map((fork) => [fork.id, fork.nominalHz]));
  return (id) => {
    const pitchHz = forks.get(id);
    return `the fork of ${pitchHz === undefined ? '?' : fixed(pitchHz, pitchHz % 1 === 0 ? 0 : 1)} Hz`;
  };
}
