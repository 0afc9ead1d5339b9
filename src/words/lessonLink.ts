import type { LessonFault, LinkFault } from '../notebook/lessonLink.ts';
import { recordFaultWords } from './recordFaults.ts';

/** Why a lesson can’t be handed out as a link, and what to do. */
export function lessonFaultWords(fault: LessonFault): string {
  switch (fault.code) {
    case 'task-too-long':
      return `The task has ${fault.length} characters; ${fault.longest} is the most that a lesson link holds. Shorten it.`;
    case 'link-too-long':
      return `The link would be longer than the ${fault.longest} characters that it may have: ${fault.forks} forks are too many for one lesson. Take forks out, or shorten the task.`;
  }
}

/** Why a lesson link can’t be used, and what to do. */
export function linkFaultWords(fault: LinkFault): string {
  switch (fault.code) {
    case 'damaged':
      return 'This lesson link is damaged: ask for it again, and copy all of it.';
    case 'record':
      return `This lesson link can’t be used: ${recordFaultWords(fault.fault)} Ask for it again, made anew with the bench.`;
  }
}
