import { stepsThatAre } from '../../capture/processingSteps.ts';
import type { CaptureSettings } from '../../capture/soundSource.ts';
import { fixed } from '../../report/rounding.ts';

/** What the browser says it does to the microphone's sound, and whether levels can be trusted. */
export function settingsWords(settings: CaptureSettings, sampleRateHz: number): string {
  const on = stepsThatAre('on', settings);
  const unknown = stepsThatAre('unknown', settings);
  const rate = `${fixed(sampleRateHz / 1000, 1)} kHz`;
  if (on.length > 0)
    return `${rate} · not raw: ${on.join(', ')} on. Levels will mislead; try another browser.`;
  if (unknown.length > 0) return `${rate} · this browser doesn’t say whether ${unknown.join(', ')} is off.`;
  return `${rate} · raw: no processing by the browser`;
}
