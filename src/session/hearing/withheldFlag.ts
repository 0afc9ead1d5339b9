import type { Mark } from '../../marks/mark.ts';
import type { Resonance } from './listeningTypes.ts';

/** A flag that isn't a mark by itself, and the mark that it becomes where a person lets it in. */
export interface WithheldFlag {
  /** The tone was gated away in its passage; or it only may be a resonance, and recurring makes a mark of it too. */
  readonly why: 'gated' | 'maybe';
  readonly experimentId: string;
  readonly resonance: Resonance;
  readonly mark: Mark;
}
