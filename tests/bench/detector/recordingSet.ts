import { CHECK_CONDITIONS, SET_SEEDS, SLIDE_CONDITIONS, type Condition, type Scenario } from './scenario.ts';

export type SetName = 'tune' | 'report' | 'check' | 'check-tune';

/** One recording to make. */
export interface SetEntry {
  readonly scenario: Scenario;
  readonly seed: number;
}

/**
 * The recordings of a set, always the same.
 * @param each  recordings a condition; null: 5 of slides, 18 of each kind of check
 */
export function recordingSet(name: SetName, each: number | null): SetEntry[] {
  const isCheck = name.startsWith('check');
  const conditions: readonly Condition[] = isCheck ? CHECK_CONDITIONS : SLIDE_CONDITIONS;
  const first = name === 'tune' || name === 'check-tune' ? SET_SEEDS.tune : SET_SEEDS.report;
  const count = each ?? (isCheck ? 18 : 5);
  return conditions.flatMap((condition) =>
    Array.from({ length: count }, (_, i) => ({ scenario: { condition }, seed: first + i })),
  );
}
