import { ANY_COLUMN, guessesOf } from '../../resonance/following/columnGuess.ts';
import type { ColumnGuess, KnownTube } from '../../resonance/following/columnGuess.ts';
import { passCentre } from '../../resonance/following/passCentre.ts';
import type { DetectedPassage } from '../../resonance/passages/detectedPassage.ts';
import type { ToneSeries } from '../../tone/toneSeries.ts';
import { ColumnFollowing } from './columnFollowing.ts';
import type { FollowingTools } from './listeningOptions.ts';
import type { Sounding } from './listeningTypes.ts';

/**
 * What follows the column in one listening.
 * @param tube  asked at each flag, since the tube can be typed while one listens; null where it isn't known
 */
export function followingTools(tube: () => KnownTube | null) {
  const guesses = (): readonly ColumnGuess[] => guessesNow(tube());
  return {
    centreOf: (series: ToneSeries, passage: DetectedPassage, offsetHz: number, sounding: Sounding) =>
      passCentre(series, passage, offsetHz, sounding, guesses()),
    follow: (series: ToneSeries) => new ColumnFollowing(series, guesses),
  } satisfies FollowingTools;
}

/** A tube that no theory reaches, too wide for its fork, is as good as unknown: listening goes on. */
function guessesNow(tube: KnownTube | null): readonly ColumnGuess[] {
  if (tube === null) return ANY_COLUMN;
  try {
    return guessesOf(tube);
  } catch (error) {
    if (error instanceof RangeError) return ANY_COLUMN;
    throw error;
  }
}
