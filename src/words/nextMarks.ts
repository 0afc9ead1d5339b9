import type { NextMark } from '../solver/plan.ts';
import { words } from './inUse.ts';
import { ordinal } from './en/grammar.ts';
import { fixed } from './numbers.ts';

/** Gains below this part aren't worth a hint on the bench. */
const LEAST_HINT = 0.05;

/**
 * Where the next mark gains most, in one line.
 * @param zeroOffsetM  reading at no length, added to the place on the rule
 * @param hidePlace  the lesson keeps back where resonances are to be expected
 */
export function nextWords(mark: NextMark, zeroOffsetM: number, hidePlace: boolean): string {
  const where = hidePlace ? '' : `, near ${fixed((mark.lengthM + zeroOffsetM) * 100, 1)} cm`;
  const again = mark.isRepeat ? ', read once more' : '';
  return `${ordinal(mark.order)} resonance of the ${fixed(mark.frequencyHz, 0)} Hz fork, ${words.endsShort[mark.ends]} column${where}${again}`;
}

/** What it gains: the part of the uncertainty that goes, and what is left. */
export function gainWords(mark: NextMark): { readonly gain: string; readonly left: string } {
  return {
    gain: `${fixed(mark.gain * 100, 0)} % less`,
    left: `u = ${fixed(mark.standardUncertaintyMps, 2)} m/s`,
  };
}

/** The hint beside the result; null where no mark would gain much. */
export function nextHint(marks: readonly NextMark[], zeroOffsetM: number, hidePlace: boolean): string | null {
  const best = marks.at(0);
  if (best === undefined || best.gain < LEAST_HINT) return null;
  return `Next, to gain most: the ${nextWords(best, zeroOffsetM, hidePlace)} (uncertainty ${gainWords(best).gain}).`;
}
