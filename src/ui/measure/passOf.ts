import type { RecentLevels } from '../../session/hearing/recentLevels.ts';

/** Where in the present run a resonance was heard. */
export interface Pass {
  /** Which ringing of the fork, from 1. */
  readonly strike: number;
  /** Which resonance in that ringing, from 1. */
  readonly pass: number;
}

/** By the time of its peak on the run's own axis; null for what this run didn't hear. */
export function passOf(
  { resonances, soundings }: Pick<RecentLevels, 'resonances' | 'soundings'>,
  timeS: number,
): Pass | null {
  const heard = resonances.find((resonance) => resonance.timeS === timeS);
  const at = soundings.findIndex(({ index }) => index === (heard?.soundingIndex ?? null));
  if (heard === undefined || at < 0) return null;
  const before = resonances.filter(
    (other) => other.soundingIndex === heard.soundingIndex && other.timeS <= timeS,
  );
  return { strike: at + 1, pass: before.length };
}
