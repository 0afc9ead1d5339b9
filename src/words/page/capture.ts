import type { CaptureSettings, ProcessingFlag } from '../../capture/soundSource.ts';
import { PROCESSING_STEPS } from '../../capture/processingSteps.ts';
import { words } from '../inUse.ts';

const FLAGS: Readonly<Record<ProcessingFlag, string>> = { on: 'on', off: 'off', unknown: 'unknown' };

/** The three steps of a browser that rewrite a level, and what it says of each. */
export function flagWords(
  settings: CaptureSettings,
): readonly { readonly name: string; readonly state: string }[] {
  return PROCESSING_STEPS.map((step) => ({ name: words.stepLabels[step], state: FLAGS[settings[step]] }));
}
