import type { Step } from '../notebook/step.ts';

const STEP_WORDS: Readonly<Record<Step, string>> = {
  'add fork': 'add fork',
  'add mark': 'add mark',
  'add place': 'add place',
  'add table': 'add table',
  'bring mark back': 'bring mark back',
  'change fork': 'change fork',
  'change place': 'change place',
  'change rule': 'change rule',
  'change tube': 'change tube',
  'change what is measured': 'change what is measured',
  'delete mark': 'delete mark',
  'edit mark': 'edit mark',
  'flagged resonance': 'flagged resonance',
  'gain check': 'gain check',
  'join marks': 'join marks',
  'leave mark out': 'leave mark out',
  'listen again': 'listen again',
  'marked in the recording': 'marked in the recording',
  'new experiment': 'new experiment',
  'note readings': 'note readings',
  'note sweep': 'note sweep',
  'open file': 'open file',
  'open lesson': 'open lesson',
  'open table': 'open table',
  'put mark back in': 'put mark back in',
  'remove fork': 'remove fork',
  'remove place': 'remove place',
  rename: 'rename',
  'separate marks': 'separate marks',
  'set order': 'set order',
  'type length': 'type length',
  'use measured pitch': 'use measured pitch',
  'write note': 'write note',
};

/** What can be undone, within a sentence. @param step  a kept name; one of another version stands for itself */
export function stepWords(step: string): string {
  return Object.hasOwn(STEP_WORDS, step) ? STEP_WORDS[step as Step] : step;
}
