import type { CaptureSettings } from '../../capture/soundSource.ts';
import { PROCESSING_STEPS } from '../../capture/processingSteps.ts';
import type { Resonance } from '../../session/hearing/listeningTypes.ts';
import { words } from '../inUse.ts';
import { fixed, percent } from '../numbers.ts';
import { resonanceReason } from '../resonances.ts';

/** The three steps of a browser that rewrite a level, and what it says of each. */
export function flagWords(
  settings: CaptureSettings,
): readonly { readonly name: string; readonly state: string }[] {
  return PROCESSING_STEPS.map((step) => ({
    name: words.stepLabels[step],
    state: words.processingFlag[settings[step]],
  }));
}

/** A flag that was withheld, by its moment and its rise. */
export function withheldFlagWords({ timeS, riseDb }: Pick<Resonance, 'timeS' | 'riseDb'>): string {
  return words.trustPart.flag(fixed(timeS, 1), fixed(riseDb, 0));
}

/** What only may be a resonance, how sure it is, and why it was heard as one. */
export function maybeWords(resonance: Resonance): string {
  const { timeS, confidence } = resonance;
  return words.trustPart.maybe(fixed(timeS, 1), percent(confidence), resonanceReason(resonance));
}

/** The name of the button that keeps it. */
export function keepMaybeWords({ timeS }: Pick<Resonance, 'timeS'>): string {
  return words.trustPart.keepNamed(fixed(timeS, 1));
}
