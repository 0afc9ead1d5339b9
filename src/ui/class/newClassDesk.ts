import { yieldToPage } from '../../capture/yieldToPage.ts';
import { ClassDesk } from '../../classroom/classDesk.ts';

/** A class desk on this page's clock. */
export function newClassDesk(): ClassDesk {
  return new ClassDesk({ now: () => performance.now(), pause: yieldToPage });
}
