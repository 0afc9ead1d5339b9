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
  const guesses = (): readonly ColumnGuess[] => {
    const known = tube();
    return known === null ? ANY_COLUMN : guessesOf(known);
  };
  return {
    centreOf: (series: ToneSeries, passage: DetectedPassage, offsetHz: number, sounding: Sounding) =>
      passCentre(series, passage, offsetHz, sounding, guesses()),
    follow: (series: ToneSeries) => new ColumnFollowing(series, guesses),
  } satisfies FollowingTools;
}
