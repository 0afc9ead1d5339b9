import { coverageFactor } from './studentT.ts';

export interface GroupResult {
  readonly name: string;
  readonly value: number;
  readonly standardUncertainty: number;
}

/** Mean of groups that may differ by more than their stated uncertainties. */
export interface PooledMean {
  readonly value: number;
  readonly standardUncertainty: number;
  readonly expandedUncertainty: number;
  /** Standard deviation between groups beyond their own uncertainties, in the value's unit. */
  readonly betweenGroups: number;
  /** Names of groups that lie off the others even with that spread allowed; they are not in the mean. */
  readonly outlying: readonly string[];
  readonly groups: number;
}

/** A group further off than this many standard deviations is outlying. */
const OUTLYING = 3.5;

/**
 * Random-effects mean: the spread between groups is chosen such that the weighted squares agree with their number.
 * The interval is widened after Hartung and Knapp, which holds for few groups. Groups that lie off are found one by one,
 * each against all others, and left out.
 * @param groups  uncertainties above 0
 * @returns null where no group has a usable value
 * @see Paule & Mandel 1982, J. Res. Natl. Bur. Stand. 87, 377; Hartung & Knapp 2001, Statist. Med. 20, 1771
 */
export function pooledMean(groups: readonly GroupResult[]): PooledMean | null {
  let kept = groups.filter(
    ({ value, standardUncertainty }) =>
      Number.isFinite(value) && standardUncertainty > 0 && Number.isFinite(standardUncertainty),
  );
  const outlying: string[] = [];
  // Of three, one that is off can't be told from two that are; half may be off at most.
  const fewest = Math.max(3, Math.ceil(kept.length / 2));
  while (kept.length > fewest) {
    let worst: GroupResult | null = null;
    let furthest = OUTLYING;
    for (const group of suspects(kept)) {
      const rest = kept.filter((other) => other !== group);
      const { value, variance, between } = meanOf(rest);
      const off =
        Math.abs(group.value - value) / Math.sqrt(group.standardUncertainty ** 2 + between + variance);
      if (off > furthest) {
        furthest = off;
        worst = group;
      }
    }
    if (worst === null) break;
    outlying.push(worst.name);
    const leaving = worst;
    kept = kept.filter((group) => group !== leaving);
  }
  const only = kept.at(0);
  if (only === undefined) return null;
  const { value, variance, between, weights } = meanOf(kept);
  const degrees = kept.length - 1;
  const scatter =
    degrees === 0
      ? 1
      : Math.max(
          kept.reduce((sum, group, i) => sum + (weights[i] ?? 0) * (group.value - value) ** 2, 0) / degrees,
          1,
        );
  const standardUncertainty = Math.sqrt(variance * scatter);
  return {
    value,
    standardUncertainty,
    // Where the groups agree within their own uncertainties these, not the scatter of a few, are what is known.
    expandedUncertainty:
      (degrees > 0 && between > 0 ? coverageFactor(degrees) : coverageFactor(50)) * standardUncertainty,
    betweenGroups: Math.sqrt(between),
    outlying,
    groups: kept.length,
  };
}

/** So many of the groups that lie furthest off are looked at one by one. */
const SUSPECTS = 8;

/** Groups furthest off the mean of all, in standard deviations, furthest first: one that lies off alone is among them. */
function suspects(groups: readonly GroupResult[]): readonly GroupResult[] {
  if (groups.length <= SUSPECTS) return groups;
  const { value, weights } = meanOf(groups);
  return groups
    .map((group, i) => ({ group, off: (group.value - value) ** 2 * (weights[i] ?? 0) }))
    .sort((a, b) => b.off - a.off)
    .slice(0, SUSPECTS)
    .map(({ group }) => group);
}

interface Mean {
  readonly value: number;
  readonly variance: number;
  readonly between: number;
  readonly weights: readonly number[];
}

function meanOf(groups: readonly GroupResult[]): Mean {
  const degrees = groups.length - 1;
  const squaresBeyond = (between: number): number => {
    let [total, sum, squares] = [0, 0, 0];
    for (const { value, standardUncertainty } of groups) {
      const weight = 1 / (standardUncertainty ** 2 + between);
      total += weight;
      sum += weight * value;
    }
    const mean = sum / total;
    for (const { value, standardUncertainty } of groups) {
      squares += (value - mean) ** 2 / (standardUncertainty ** 2 + between);
    }
    return squares - degrees;
  };
  let low = 0;
  let high = 0;
  if (degrees > 0 && squaresBeyond(0) > 0) {
    // At the full spread of the values the weighted squares are certainly too small.
    const values = groups.map(({ value }) => value);
    high = (Math.max(...values) - Math.min(...values)) ** 2 * groups.length;
    for (let round = 0; round < 60; round += 1) {
      const middle = (low + high) / 2;
      if (squaresBeyond(middle) > 0) low = middle;
      else high = middle;
    }
  }
  const between = (low + high) / 2;
  const { value, weights, total } = weigh(groups, between);
  return { value, variance: 1 / total, between, weights };
}

function weigh(groups: readonly GroupResult[], between: number) {
  const weights = groups.map(({ standardUncertainty }) => 1 / (standardUncertainty ** 2 + between));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const value = groups.reduce((sum, group, i) => sum + (weights[i] ?? 0) * group.value, 0) / total;
  return { value, weights, total };
}
