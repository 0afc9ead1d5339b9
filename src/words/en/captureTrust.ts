import type { ProcessingStep } from '../../capture/processingSteps.ts';

/** The steps of a browser that rewrite a level, as people call them, at the head of a line. */
export const stepLabels = {
  autoGainControl: 'Automatic gain',
  noiseSuppression: 'Noise suppression',
  echoCancellation: 'Echo cancellation',
} satisfies Readonly<Record<ProcessingStep, string>>;
