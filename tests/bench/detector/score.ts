import type { HeardPassage } from './worldSound.ts';

/** A moment that a detector calls a resonance. */
export interface Flag {
  readonly timeS: number;
  /** When it said so, on the recording's time axis; null where it looked at the finished recording. */
  readonly flaggedAtS: number | null;
}

/** What came of the flags of one or more recordings. */
export interface Score {
  readonly audible: number;
  readonly hits: number;
  readonly falseAlarms: number;
  /** Flag minus truth, s, for each hit. */
  readonly timingErrorsS: readonly number[];
  /** From the true maximum to the flag's being said, s, for each hit that tells. */
  readonly delaysS: readonly number[];
}

export const NO_SCORE: Score = { audible: 0, hits: 0, falseAlarms: 0, timingErrorsS: [], delaysS: [] };

/** How far a flag may be from a passage's peak: 0.35 s, or the passage's half-width where that is longer. */
export function toleranceS(passage: HeardPassage): number {
  return Math.max(0.35, passage.halfWidthS);
}

/** Whether a flag means a passage: within the tolerance of its peak, or between its half-power moments. */
export function means(flag: Flag, passage: HeardPassage): boolean {
  const near = Math.abs(flag.timeS - passage.timeS) <= toleranceS(passage);
  return near || (flag.timeS >= passage.fromS && flag.timeS <= passage.toS);
}

/**
 * Matches flags with passages, nearest pairs first. Each audible passage is found once at most; every further
 * flag is a false alarm, except near a passage that isn't counted.
 */
export function score(flags: readonly Flag[], passages: readonly HeardPassage[]): Score {
  const audible = passages.filter((passage) => passage.audible);
  const pairs = flags
    .flatMap((flag) =>
      audible.map((passage) => ({ flag, passage, gap: Math.abs(flag.timeS - passage.timeS) })),
    )
    .filter(({ flag, passage }) => means(flag, passage))
    .sort((a, b) => a.gap - b.gap);
  const used = new Set<Flag>();
  const found = new Set<HeardPassage>();
  const timingErrorsS: number[] = [];
  const delaysS: number[] = [];
  for (const { flag, passage } of pairs) {
    if (used.has(flag) || found.has(passage)) continue;
    used.add(flag);
    found.add(passage);
    timingErrorsS.push(flag.timeS - passage.timeS);
    if (flag.flaggedAtS !== null) delaysS.push(flag.flaggedAtS - passage.timeS);
  }
  const uncounted = passages.filter((passage) => !passage.audible);
  const excused = (flag: Flag): boolean => uncounted.some((passage) => means(flag, passage));
  const falseAlarms = flags.filter((flag) => !used.has(flag) && !excused(flag)).length;
  return { audible: audible.length, hits: found.size, falseAlarms, timingErrorsS, delaysS };
}

/** Scores of several recordings together. */
export function addScores(scores: readonly Score[]): Score {
  return scores.reduce(
    (sum, each) => ({
      audible: sum.audible + each.audible,
      hits: sum.hits + each.hits,
      falseAlarms: sum.falseAlarms + each.falseAlarms,
      timingErrorsS: [...sum.timingErrorsS, ...each.timingErrorsS],
      delaysS: [...sum.delaysS, ...each.delaysS],
    }),
    NO_SCORE,
  );
}

/** Share of the flags that are right; null without flags. */
export function precision(each: Score): number | null {
  const flags = each.hits + each.falseAlarms;
  return flags === 0 ? null : each.hits / flags;
}

/** Share of the audible passages that were found; null without any. */
export function recall(each: Score): number | null {
  return each.audible === 0 ? null : each.hits / each.audible;
}

/** Harmonic mean of precision and recall, 2 hits / (flags + audible); null where both are empty. */
export function f1(each: Score): number | null {
  const sum = each.hits + each.falseAlarms + each.audible;
  return sum === 0 ? null : (2 * each.hits) / sum;
}

/** Value below which the given share lies (nearest rank); null for none. */
export function quantile(values: readonly number[], share: number): number | null {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? null;
}
