import type { CentreMoment } from '../../resonance/following/passRun.ts';
import type { DetectedPassage } from '../../resonance/passages/detectedPassage.ts';
import type { ToneSeries } from '../../tone/toneSeries.ts';
import type { ColumnFollowing } from './columnFollowing.ts';
import type { ForkPitch, Sounding } from './listeningTypes.ts';

/** Finds when the length was right during a passage; see `passCentre`. */
export type CentreOf = (
  series: ToneSeries,
  passage: DetectedPassage,
  offsetHz: number,
  sounding: Sounding,
) => CentreMoment | null;

/** What tells where the column is. */
export interface FollowingTools {
  /** Where it isn't given, no resonance has its centre. */
  readonly centreOf?: CentreOf;
  /** Asked at a flag, until it gives what follows the column from then on. */
  readonly follow?: (series: ToneSeries) => ColumnFollowing | null;
}

export interface ListeningOptions extends FollowingTools {
  /** 8000..384000 */
  readonly sampleRateHz: number;
  readonly fork: ForkPitch;
}
