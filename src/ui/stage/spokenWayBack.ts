import { FRESH_S } from '../../session/hearing/wayBack.ts';
import type { Stopper } from '../../notebook/experiment.ts';
import type { WayBack } from '../../session/hearing/wayBack.ts';
import { words } from '../../words/inUse.ts';
import { spokenWayBackWords } from '../../words/page/stage.ts';

const CLOSE_DB = 5;

/**
 * The way back for the ear, in few steps only: more would talk over the fork.
 * @param before  what was said last
 * @param stopper  what the hand moves
 */
export function spokenWayBack(way: WayBack, before: string, stopper: Stopper): string {
  const { spoken } = words.wayBack;
  switch (way.kind) {
    case 'none':
      return '';
    case 'here':
      return way.by === 'centre' ? spoken.here : spoken.atMaximum;
    case 'off':
      // What was here a while ago may be elsewhere now.
      if (way.ageS > FRESH_S) return before === spoken.here || before === spoken.atMaximum ? '' : before;
      return spokenWayBackWords(way.place.halfWidths > 0, way.place.distanceM, stopper);
    case 'lost':
      return spoken.lost;
    case 'level':
      if (way.belowBestDb <= CLOSE_DB) return spoken.close;
      // Right after a flag it is no news that the column has gone on.
      return before === '' ? '' : spoken.away;
  }
}
