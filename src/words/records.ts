import type { KeepingFault } from '../notebook/keepingRule.ts';
import type { NotLoaded } from '../session/experiment/loaded.ts';
import { columnFaultWords } from './columnFaults.ts';
import { words } from './inUse.ts';
import { fixed, megabytes } from './numbers.ts';
import type { PartedText } from './partedText.ts';
import { firstFaultWords, recordFaultWords } from './recordFaults.ts';
import { storageFaultWords } from './storageFaults.ts';

/** Why a change can’t be kept, and what to do. */
export function keepingFaultWords(fault: KeepingFault): string {
  const said = words.keepingFault;
  switch (fault.code) {
    case 'list-full':
      return said.listFull[fault.list](fault.most);
    case 'no-column':
      return columnFaultWords(fault.fault);
    case 'unreadable':
      return said.unreadable(recordFaultWords(fault.fault));
    case 'too-large':
      return said.tooLarge(fixed(fault.bytes / 1e6, 1), fixed(fault.mostBytes / 1e6, 0));
  }
}

/** That sound is being saved, and how much of its room is used; bytes. */
export function savingSoundWords(usedBytes: number, limitBytes: number): PartedText {
  return words.keepingBar.sound(megabytes(usedBytes), megabytes(limitBytes));
}

/** Why an experiment of the notebook isn’t there to be opened; goes on after a colon. */
export function notLoadedWords(loaded: NotLoaded): string {
  switch (loaded.kind) {
    case 'missing':
      return words.notLoaded.missing;
    case 'unreadable':
      return words.notLoaded.unreadable(firstFaultWords(loaded.faults));
    case 'refused':
      return storageFaultWords(loaded.fault);
  }
}
