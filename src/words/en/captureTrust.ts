import type { ProcessingStep } from '../../capture/processingSteps.ts';
import type { MarkDoubt } from '../../marks/mark.ts';

/** The steps of a browser that rewrite a level, as people call them, at the head of a line. */
export const stepLabels = {
  autoGainControl: 'Automatic gain',
  noiseSuppression: 'Noise suppression',
  echoCancellation: 'Echo cancellation',
} satisfies Readonly<Record<ProcessingStep, string>>;

/** The same within a sentence. */
export const stepNames = {
  autoGainControl: 'automatic gain',
  noiseSuppression: 'noise suppression',
  echoCancellation: 'echo cancellation',
} satisfies Readonly<Record<ProcessingStep, string>>;

/** How far levels can be trusted, why, and what to do: for marks that are made, or for a sweep. */
export const captureTrust = {
  nothingProcesses: 'Nothing processes this source.',
  /** @param steps  by their names within a sentence, as a list */
  processingOn: {
    marks: (steps: string) =>
      `This browser keeps ${steps} on, which may change the level. Resonances are marked all the same, each with this doubt: their lengths hold, their rises in dB may be wrong. Choose another microphone or another browser, switch voice modes off in the system’s sound settings, or record with any recorder and open the file here.`,
    sweep: (steps: string) =>
      `This browser keeps ${steps} on, which may change the level. The peaks below may be moved or missing. Choose another microphone or another browser, or switch voice modes off in the system’s sound settings.`,
  },
  checkFailed: {
    marks:
      'The gain check found that something changes the level. Resonances are marked all the same, each with this doubt: their lengths hold, their rises in dB may be wrong. Switch voice modes off in the system’s sound settings or choose another microphone, then do the check again.',
    sweep:
      'The gain check found that something changes the level. The peaks below may be moved or missing. Switch voice modes off in the system’s sound settings or choose another microphone, then do the check again.',
  },
  checkPassed: 'The gain check was passed with this microphone.',
  soundsProcessed: {
    marks:
      'The sound looks processed, though the browser says it is not. Resonances are marked all the same, each with this doubt: their lengths hold, their rises in dB may be wrong. Do the gain check: if it is passed, newer marks are free of the doubt.',
    sweep:
      'The sound looks processed, though the browser says it is not. The peaks below may be moved or missing. Do the gain check: if it is passed, sweep again.',
  },
  processingOff: 'The browser’s processing is off.',
  /** @param steps  by their names within a sentence, as a list */
  processingUnsaid: (steps: string) =>
    `This browser doesn’t say whether it has turned off ${steps}. Do the gain check before you trust a level.`,
};

/** What speaks against a mark. */
export const markDoubt = {
  /** @param reasons  as below, one after the other */
  inDoubt: (reasons: string) => `In doubt: ${reasons}`,
  reasons: {
    'processing-on': 'the browser’s processing was on, so the rise in dB may be wrong',
    'gain-check-failed': 'the gain check had failed, so the rise in dB may be wrong',
    'sounds-processed': 'the sound looked processed, so the rise in dB may be wrong',
    suppressed: 'the sound broke off in it, so it may be no resonance',
  } satisfies Readonly<Record<MarkDoubt, string>>,
};
