import type { KnownTube } from '../../resonance/following/columnGuess.ts';
import type { SampleBlock } from '../../capture/soundSource.ts';
import type { ForkPitch, ListeningReport, ListeningUpdate } from './listeningTypes.ts';

/** The stages tone → room → resonance as the bench drives them. */
export interface ListeningLike {
  push(block: SampleBlock): ListeningUpdate;
  finish(): ListeningUpdate;
  offlineReport(): ListeningReport;
  /**
   * Goes on in place of one that heard the same source for longer: what that learnt of the column stays.
   * @param beganS  where this one began on the other's time axis, s
   */
  takeOver?(before: ListeningLike, beganS: number): void;
}

export interface ListeningOrder {
  readonly sampleRateHz: number;
  readonly fork: ForkPitch;
  /** The tube as it is known now; null where it isn't. */
  readonly tube: () => KnownTube | null;
}

export type CreateListening = (order: ListeningOrder) => ListeningLike;
