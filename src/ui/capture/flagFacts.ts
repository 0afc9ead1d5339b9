import { PROCESSING_STEPS } from '../../capture/processingSteps.ts';
import type { CaptureSettings, ProcessingFlag } from '../../capture/soundSource.ts';

/** One processing step of the browser and what it says of it. */
export interface FlagFact {
  readonly name: string;
  readonly state: ProcessingFlag;
}

/** The three steps that rewrite a level, as read back from the running track. */
export function flagFacts(settings: CaptureSettings): readonly FlagFact[] {
  return PROCESSING_STEPS.map(([key, name]) => ({
    name: name.charAt(0).toUpperCase() + name.slice(1),
    state: settings[key],
  }));
}
