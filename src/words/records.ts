import type { KeepingFault } from '../notebook/keepingRule.ts';
import type { NotLoaded } from '../session/experiment/loaded.ts';
import { columnFaultWords } from './columnFaults.ts';
import { fixed } from './numbers.ts';
import { firstFaultWords, recordFaultWords } from './recordFaults.ts';
import { storageFaultWords } from './storageFaults.ts';

/** What each list of an experiment is called, and what makes room in it. */
const LISTS: Readonly<
  Record<
    Extract<KeepingFault, { code: 'list-full' }>['list'],
    { readonly name: string; readonly instead: string }
  >
> = {
  marks: { name: 'marks', instead: 'Begin another experiment for more (Records).' },
  deletedMarks: {
    name: 'deleted marks',
    instead: 'Bring some back, or begin another experiment (Records).',
  },
  forks: { name: 'forks', instead: 'Remove one that has no marks.' },
  places: { name: 'places', instead: 'Remove one that has no marks.' },
};

/** Why a change can’t be kept, and what to do. */
export function keepingFaultWords(fault: KeepingFault): string {
  switch (fault.code) {
    case 'list-full': {
      const { name, instead } = LISTS[fault.list];
      return `An experiment holds ${fault.most} ${name} at most. ${instead}`;
    }
    case 'no-column':
      return columnFaultWords(fault.fault);
    case 'unreadable':
      return `That can’t be kept: ${recordFaultWords(fault.fault)}`;
    case 'too-large':
      return `The experiment would have ${fixed(fault.bytes / 1e6, 1)} MB; its file may have ${fixed(fault.mostBytes / 1e6, 0)} MB. Begin another one for more (Records), or shorten its notes.`;
  }
}

/** Why an experiment of the notebook isn’t there to be opened; goes on after a colon. */
export function notLoadedWords(loaded: NotLoaded): string {
  switch (loaded.kind) {
    case 'missing':
      return 'it is no longer there.';
    case 'unreadable':
      return `${firstFaultWords(loaded.faults)} Under Records it can be saved as it is.`;
    case 'refused':
      return storageFaultWords(loaded.fault);
  }
}
