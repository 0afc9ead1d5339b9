import type { KnownTube } from '../resonance/following/columnGuess.ts';
import type { FollowingTools } from '../session/hearing/listeningOptions.ts';

type Make = (tube: () => KnownTube | null) => FollowingTools;

/**
 * What follows the column, loaded with the first listening. Until it is there a flag has no centre and no way back by
 * phase; the first flag comes seconds later. Where it can't be loaded the way back goes by level.
 */
export function lateFollowing(): (tube: () => KnownTube | null) => Required<FollowingTools> {
  let make: Make | null = null;
  return (tube) => {
    import('../session/hearing/followingTools.ts').then(
      ({ followingTools }) => (make = followingTools),
      () => undefined,
    );
    return {
      centreOf: (...passage) => make?.(tube).centreOf?.(...passage) ?? null,
      follow: (series) => make?.(tube).follow?.(series) ?? null,
    };
  };
}
