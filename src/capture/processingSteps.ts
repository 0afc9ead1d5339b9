import type { CaptureSettings } from './soundSource.ts';

/** The steps of a browser that rewrite a level, as people call them. */
export const PROCESSING_STEPS = [
  ['autoGainControl', 'automatic gain'],
  ['noiseSuppression', 'noise suppression'],
  ['echoCancellation', 'echo cancellation'],
] as const satisfies readonly (readonly [keyof CaptureSettings, string])[];

/** Names of the steps that the browser says this of. */
export function stepsThatAre(state: 'on' | 'unknown', settings: CaptureSettings): readonly string[] {
  return PROCESSING_STEPS.filter(([key]) => settings[key] === state).map(([, name]) => name);
}
