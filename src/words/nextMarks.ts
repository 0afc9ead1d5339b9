import type { NextMark } from '../solver/plan.ts';
import { words } from './inUse.ts';
import { fixed, percent } from './numbers.ts';

/** Gains below this part aren't worth a hint beside the result. */
const LEAST_HINT = 0.05;

/**
 * Where the next mark gains most, in one line.
 * @param zeroOffsetM  reading at no length, added to the place on the rule
 * @param hidePlace  the lesson keeps back where resonances are to be expected
 */
export function nextWords(mark: NextMark, zeroOffsetM: number, hidePlace: boolean): string {
  const said = words.nextMark;
  const resonance = said.resonance[mark.ends](mark.order, fixed(mark.frequencyHz, 0));
  const placed = hidePlace ? resonance : said.near(resonance, fixed((mark.lengthM + zeroOffsetM) * 100, 1));
  return mark.isRepeat ? said.again(placed) : placed;
}

/** What it gains: the part of the uncertainty that goes, and what is left. */
export function gainWords(mark: NextMark): { readonly gain: string; readonly left: string } {
  return {
    gain: words.nextMark.gain(percent(mark.gain)),
    left: words.nextMark.left(fixed(mark.standardUncertaintyMps, 2)),
  };
}

/** The hint beside the result; null where no mark would gain much. */
export function nextHint(marks: readonly NextMark[], zeroOffsetM: number, hidePlace: boolean): string | null {
  const best = marks.at(0);
  if (best === undefined || best.gain < LEAST_HINT) return null;
  return words.nextMark.hint(nextWords(best, zeroOffsetM, hidePlace), percent(best.gain));
}
