import type { RecentLevels } from '../../session/hearing/recentLevels.ts';
import { words } from '../inUse.ts';
import { counted } from '../en/grammar.ts';
import { fixed } from '../numbers.ts';

/** The strip in words: what was last heard, and each flag. Changes only when something happens. */
export function stripWords(trace: RecentLevels): string {
  const { resonances, soundings } = trace;
  if (trace.points.length === 0) return words.stripLabels.nothing;
  const flags = resonances
    .slice(-5)
    .map(
      ({ timeS, riseDb, certainty }) =>
        `${certainty === 'maybe' ? 'perhaps ' : ''}at ${fixed(timeS, 1)} s, rise ${fixed(riseDb, 0)} dB`,
    )
    .join('; ');
  const heard = counted(soundings.length, 'sounding');
  return resonances.length === 0 ? `${heard}, no resonance flagged.` : `${heard}. Resonances: ${flags}.`;
}
