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
      return 'This link is damaged: ask for it again, and copy all of it.';
    case 'newer':
      return 'This link was made by a newer bench: load this page again while there is a network.';
    case 'no-inflate':
      return 'This browser is too old to read the link: it needs Firefox 113, Safari 16.4 or Chrome 80, or any later one.';
    case 'record':
      return `This lesson link can’t be used: ${recordFaultWords(fault.fault)} Ask for it again, made anew with the bench.`;
  }
}
