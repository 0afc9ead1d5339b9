import type { LessonFault, LinkFault } from '../notebook/lessonLink.ts';
import { laterWords, words } from './inUse.ts';
import { recordFaultWords } from './recordFaults.ts';

/** Why a lesson can’t be handed out as a link, and what to do. */
export function lessonFaultWords(fault: LessonFault): string {
  switch (fault.code) {
    case 'task-too-long':
      return laterWords.lessonFault.taskTooLong(fault.length, fault.longest);
    case 'link-too-long':
      return laterWords.lessonFault.linkTooLong(fault.forks, fault.longest);
  }
}

/** Why a lesson link can’t be used, and what to do. */
export function linkFaultWords(fault: LinkFault): string {
  switch (fault.code) {
    case 'damaged':
      return words.linkFault.damaged;
    case 'newer':
      return words.linkFault.newer;
    case 'no-inflate':
      return words.linkFault.noInflate;
    case 'record':
      return words.linkFault.record(recordFaultWords(fault.fault));
  }
}
