import type { Step } from '../notebook/step.ts';

/** What undo calls the steps, by what the history calls them. */
const STEPS: Readonly<Record<Step, string>> = {
  'add fork': 'add fork',
  'add mark': 'add mark',
  'add place': 'add place',
  'add table': 'add table',
  'change fork': 'change fork',
  'change place': 'change place',
  'change present': 'change what is measured',
  'change rule': 'change rule',
  'change setup': 'change fork or column of marks',
  'change tube': 'change tube',
  'delete mark': 'delete mark',
  'edit mark': 'edit mark',
  'exclude mark': 'leave mark out',
  'flagged resonance': 'flagged resonance',
  'gain check': 'gain check',
  'include mark': 'put mark back in',
  'join marks': 'join marks',
  'name group': 'name the group',
  'listen again': 'listen again',
  'new experiment': 'new experiment',
  'note readings': 'note readings',
  'note sweep': 'note sweep',
  'open file': 'open file',
  'open lesson': 'open lesson',
  'open table': 'open table',
  'recording mark': 'marked in the recording',
  'remove fork': 'remove fork',
  'remove place': 'remove place',
  rename: 'rename',
  'reveal lesson': 'show what was kept back',
  'restore mark': 'bring mark back',
  'separate marks': 'separate marks',
  'set order': 'set order',
  'set place': 'say how a length was found',
  'type length': 'type length',
  'use measured pitch': 'use measured pitch',
  'write note': 'write note',
};

/** Names a step, for the undo button and for notices. A history kept by another bench may have steps of its own. */
export function stepWords(step: string): string {
  return Object.hasOwn(STEPS, step) ? STEPS[step as Step] : step;
}
