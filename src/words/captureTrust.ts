import type { ProcessingStep } from '../capture/processingSteps.ts';
import type { CaptureTrust, Withheld } from '../session/hearing/captureTrust.ts';

/** The steps of a browser that rewrite a level, as people call them, at the head of a line. */
export const stepLabels: Readonly<Record<ProcessingStep, string>> = {
  autoGainControl: 'Automatic gain',
  noiseSuppression: 'Noise suppression',
  echoCancellation: 'Echo cancellation',
};

/** The same within a sentence. */
const STEP_NAMES: typeof stepLabels = {
  autoGainControl: 'automatic gain',
  noiseSuppression: 'noise suppression',
  echoCancellation: 'echo cancellation',
};

/** What is withheld of a capture that is blocked, and what comes of a gain check that is passed. */
const WITHHELD: Readonly<Record<Withheld, { readonly nothing: string; readonly after: string }>> = {
  flags: { nothing: 'nothing is flagged', after: 'if it is passed, flags go on' },
  sweep: { nothing: 'the sweep gives no result', after: 'if it is passed, sweep again' },
};

/** Whether levels may become results, why, and what to do. */
export function trustWords({ reason }: Pick<CaptureTrust, 'reason'>): string {
  switch (reason.code) {
    case 'nothing-processes':
      return 'Nothing processes this source.';
    case 'processing-on':
      return `This browser keeps ${stepNames(reason.steps)} on and rewrites the level, so ${WITHHELD[reason.withheld].nothing}. Choose another microphone or another browser, switch voice modes off in the system’s sound settings, or record with any recorder and open the file here.`;
    case 'check-failed':
      return `The gain check found that something rewrites the level, so ${WITHHELD[reason.withheld].nothing}. Switch voice modes off in the system’s sound settings or choose another microphone, then do the check again.`;
    case 'check-passed':
      return 'The gain check was passed with this microphone.';
    case 'sounds-processed': {
      const { nothing, after } = WITHHELD[reason.withheld];
      return `The sound looks processed though the browser says it is not, so ${nothing}. Do the gain check: ${after}.`;
    }
    case 'processing-off':
      return 'The browser’s processing is off.';
    case 'processing-unsaid':
      return `This browser doesn’t say whether ${stepNames(reason.steps)} is off. Do the gain check before you trust a level.`;
  }
}

function stepNames(steps: readonly ProcessingStep[]): string {
  return steps.map((step) => STEP_NAMES[step]).join(' and ');
}
