import type { CaptureSettings } from '../../capture/soundSource.ts';
import { PROCESSING_STEPS } from '../../capture/processingSteps.ts';
import { words } from '../inUse.ts';

/** The three steps of a browser that rewrite a level, and what it says of each. */
export function flagWords(
  settings: CaptureSettings,
): readonly { readonly name: string; readonly state: string }[] {
  return PROCESSING_STEPS.map((step) => ({
    name: words.stepLabels[step],
    state: words.processingFlag[settings[step]],
  }));
}
