import { stepsThatAre } from '../../capture/processingSteps.ts';
import type { CaptureSettings } from '../../capture/soundSource.ts';
import { fixed } from '../../words/numbers.ts';

/** The microphone's sound in three words; what to do about one that isn't raw stands in `bench-trust`. */
export function settingsWords(settings: CaptureSettings, sampleRateHz: number): string {
  const state =
    stepsThatAre('on', settings).length > 0
      ? 'not raw'
      : stepsThatAre('unknown', settings).length > 0
        ? 'not proven raw'
        : 'raw';
  return `${fixed(sampleRateHz / 1000, 1)} kHz, ${state}`;
}
