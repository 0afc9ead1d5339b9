import type { CaptureSettings, ProcessingFlag } from '../../capture/soundSource.ts';
import { PROCESSING_STEPS } from '../../capture/processingSteps.ts';
import { stepLabels } from '../captureTrust.ts';

export const captureWords = {
  ended: 'Listening ended',
  notListening: 'Not listening.',
  held: 'Listening is paused',
  paused: 'Paused.',
  again: 'Start again',
  ownTab: 'Open in a tab of its own',
  help: 'Help with the microphone',
} as const;

export const trustPartWords = {
  name: 'Can the level be trusted?',
  blocked: 'Flags are off.',
  unproven: 'Not proven raw.',
  withheld: (flags: number) => `Withheld so far: ${flags}.`,
  toCheck: 'Go to the gain check',
} as const;

const FLAGS: Readonly<Record<ProcessingFlag, string>> = { on: 'on', off: 'off', unknown: 'unknown' };

/** The three steps of a browser that rewrite a level, and what it says of each. */
export function flagWords(
  settings: CaptureSettings,
): readonly { readonly name: string; readonly state: string }[] {
  return PROCESSING_STEPS.map((step) => ({ name: stepLabels[step], state: FLAGS[settings[step]] }));
}
