import type { RecentLevels } from '../../session/hearing/recentLevels.ts';
import { words } from '../inUse.ts';
import { clauses } from '../lists.ts';
import { fixed } from '../numbers.ts';

/** So many of the newest resonances are told. */
const MOST_TOLD = 5;

/** The strip in words: what was last heard, and each flag. Changes only when something happens. */
export function stripWords({ points, resonances, soundings }: RecentLevels): string {
  if (points.length === 0) return words.stripLabels.nothing;
  const said = words.stripSpoken;
  const told = resonances
    .slice(-MOST_TOLD)
    .map(({ timeS, riseDb, certainty }) =>
      said[certainty === 'maybe' ? 'perhaps' : 'resonance'](fixed(timeS, 1), fixed(riseDb, 0)),
    );
  const found = told.length === 0 ? said.noResonance : said.resonances(clauses(told));
  return `${said.strikes(soundings.length)} ${found}`;
}

/** What stands at a flag: the number of its mark, with a question mark where it may be no resonance. */
export function flagLabel(markNumber: number, isUnsure: boolean): string {
  return `${markNumber}${isUnsure ? '?' : ''}`;
}

/** A tick of the time axis. @param timeS  below 0: so long ago */
export function timeTick(timeS: number): string {
  return words.stripLabels.timeTick(fixed(timeS, 0));
}

export function levelTick(levelDb: number): string {
  return words.stripLabels.levelTick(fixed(levelDb, 0));
}
