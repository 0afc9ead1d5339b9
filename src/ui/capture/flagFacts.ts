import { PROCESSING_STEPS } from '../../capture/processingSteps.ts';
import { stepLabels } from '../../words/captureTrust.ts';
import type { CaptureSettings, ProcessingFlag } from '../../capture/soundSource.ts';

/** One processing step of the browser and what it says of it. */
export interface FlagFact {
  readonly name: string;
  readonly state: ProcessingFlag;
}

/** The three steps that rewrite a level, as read back from the running track. */
export function flagFacts(settings: CaptureSettings): readonly FlagFact[] {
  return PROCESSING_STEPS.map((step) => ({ name: stepLabels[step], state: settings[step] }));
}
