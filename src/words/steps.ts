import type { Step } from '../notebook/step.ts';
import { words } from './inUse.ts';

/** Names a step, for the undo button and for notices. A history saved by another version may have steps of its own. */
export function stepWords(step: string): string {
  return Object.hasOwn(words.undoStep, step) ? words.undoStep[step as Step] : step;
}
