import type { Mark } from '../../marks/mark.ts';
import type { Resonance } from './listeningTypes.ts';

/** A flag in whose passage the tone was gated away, and the mark that it becomes where a person lets it in. */
export interface WithheldFlag {
  readonly experimentId: string;
  readonly resonance: Resonance;
  readonly mark: Mark;
}
