import type { CaptureSettings } from './soundSource.ts';

/** The steps of a browser that rewrite a level. */
export const PROCESSING_STEPS = [
  'autoGainControl',
  'noiseSuppression',
  'echoCancellation',
] as const satisfies readonly (keyof CaptureSettings)[];

export type ProcessingStep = (typeof PROCESSING_STEPS)[number];

/** The steps that the browser says this of. */
export function stepsThatAre(state: 'on' | 'unknown', settings: CaptureSettings): readonly ProcessingStep[] {
  return PROCESSING_STEPS.filter((step) => settings[step] === state);
}
