import { stepsThatAre } from '../../capture/processingSteps.ts';
import type { CaptureSettings } from '../../capture/soundSource.ts';
import { soundWords } from '../../words/page/stage.ts';

/** The microphone's sound in three words; what to do about one that isn't raw stands in `bench-trust`. */
export function settingsWords(settings: CaptureSettings, sampleRateHz: number): string {
  const worst = (['on', 'unknown'] as const).find((state) => stepsThatAre(state, settings).length > 0);
  return soundWords(sampleRateHz, worst ?? 'off');
}
