import type { RecentLevels } from '../../session/hearing/recentLevels.ts';
import { counted, fixed } from '../numbers.ts';

/** The strip in words: what was last heard, and each flag. Changes only when something happens. */
export function stripWords(trace: RecentLevels): string {
  const { resonances, soundings } = trace;
  if (trace.points.length === 0) return stripLabels.nothing;
  const flags = resonances
    .slice(-5)
    .map((flag) => `at ${fixed(flag.timeS, 1)} s, rise ${fixed(flag.riseDb, 0)} dB`)
    .join('; ');
  const heard = counted(soundings.length, 'sounding');
  return resonances.length === 0 ? `${heard}, no resonance flagged.` : `${heard}. Resonances: ${flags}.`;
}

/** What stands on the strip and beside it. */
export const stripLabels = {
  nothing: 'Nothing heard yet.',
  alternative: (words: string) => `Level of the last minute. ${words}`,
  empty: 'The last minute of sound shows here while the bench listens.',
  tone: 'tone at the fork’s pitch',
  room: 'room at the same pitch',
  all: 'everything',
  timeTick: (timeS: number) => `${fixed(timeS, 0)} s`,
  levelTick: (levelDb: number) => `${fixed(levelDb, 0)} dB`,
  flag: (markNumber: number, isUnsure: boolean) => `${markNumber}${isUnsure ? '?' : ''}`,
} as const;
