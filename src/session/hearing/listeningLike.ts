import type { SampleBlock } from '../../capture/soundSource.ts';
import type { ForkPitch, ListeningReport, ListeningUpdate } from './listeningTypes.ts';

/** The stages tone → room → resonance as the bench drives them. */
export interface ListeningLike {
  push(block: SampleBlock): ListeningUpdate;
  finish(): ListeningUpdate;
  offlineReport(): ListeningReport;
}

export type CreateListening = (options: { sampleRateHz: number; fork: ForkPitch }) => ListeningLike;
