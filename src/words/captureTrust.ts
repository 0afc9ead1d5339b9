import type { ProcessingStep } from '../capture/processingSteps.ts';
import type { MarkDoubt } from '../marks/mark.ts';
import type { CaptureTrust } from '../session/hearing/captureTrust.ts';
import { words } from './inUse.ts';

/** The same within a sentence. */
const STEP_NAMES: typeof words.stepLabels = {
  autoGainControl: 'automatic gain',
  noiseSuppression: 'noise suppression',
  echoCancellation: 'echo cancellation',
};

/** What rests on the level: marks that are made, or a sweep's result. */
type RestsOnLevel = 'marks' | 'sweep';

/** What a doubt about the level means for what rests on it. */
const MEANS: Readonly<Record<RestsOnLevel, string>> = {
  marks:
    'Resonances are marked all the same, each with this doubt: their places hold, their heights in dB may be wrong.',
  sweep: 'The peaks below may be moved or missing.',
};

/** What to do once the gain check is passed. */
const AFTER: Readonly<Record<RestsOnLevel, string>> = {
  marks: 'if it is passed, newer marks are free of the doubt',
  sweep: 'if it is passed, sweep again',
};

/** How far levels can be trusted, why, and what to do. @param rests  what the level becomes */
export function trustWords({ reason }: Pick<CaptureTrust, 'reason'>, rests: RestsOnLevel = 'marks'): string {
  switch (reason.code) {
    case 'nothing-processes':
      return 'Nothing processes this source.';
    case 'processing-on':
      return `This browser keeps ${stepNames(reason.steps)} on, which may change the level. ${MEANS[rests]} Choose another microphone or another browser, switch voice modes off in the system’s sound settings, or record with any recorder and open the file here.`;
    case 'check-failed':
      return `The gain check found that something changes the level. ${MEANS[rests]} Switch voice modes off in the system’s sound settings or choose another microphone, then do the check again.`;
    case 'check-passed':
      return 'The gain check was passed with this microphone.';
    case 'sounds-processed':
      return `The sound looks processed though the browser says it is not. ${MEANS[rests]} Do the gain check: ${AFTER[rests]}.`;
    case 'processing-off':
      return 'The browser’s processing is off.';
    case 'processing-unsaid':
      return `This browser doesn’t say whether ${stepNames(reason.steps)} is off. Do the gain check before you trust a level.`;
  }
}

const DOUBTS: Readonly<Record<MarkDoubt, string>> = {
  'processing-on': 'the browser’s processing was on, so the rise in dB may be wrong',
  'gain-check-failed': 'the gain check had failed, so the rise in dB may be wrong',
  'sounds-processed': 'the sound looked processed, so the rise in dB may be wrong',
  suppressed: 'the sound broke off in it, so it may be no resonance',
};

/** What speaks against a mark; null where nothing does. */
export function doubtWords(doubts: readonly MarkDoubt[] | undefined): string | null {
  if (doubts === undefined || doubts.length === 0) return null;
  return `In doubt: ${doubts.map((doubt) => DOUBTS[doubt]).join('; ')}`;
}

function stepNames(steps: readonly ProcessingStep[]): string {
  return steps.map((step) => STEP_NAMES[step]).join(' and ');
}
