import { wayBackWords } from '../../words/page/stage.ts';

/** Nearer to the maximum than this counts as there, dB. */
export const NEAR_DB = 1.5;
const CLOSE_DB = 5;

/**
 * The way back for the ear, in three steps only: more would talk over the fork.
 * @param belowDb  present level below the best one, dB, >= 0; null where there is no way back
 * @param before  what was said last
 */
export function spokenWayBack(belowDb: number | null, before: string): string {
  if (belowDb === null) return '';
  if (belowDb <= NEAR_DB) return wayBackWords.spoken.at;
  if (belowDb <= CLOSE_DB) return wayBackWords.spoken.close;
  // Right after a flag it is no news that the column has gone on.
  return before === '' ? '' : wayBackWords.spoken.away;
}
