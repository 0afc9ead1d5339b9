import { yieldToPage } from '../../capture/yieldToPage.ts';
import { ClassDesk } from '../../classroom/classDesk.ts';
import { siteStorage } from '../../notebook/siteStorage.ts';

/** A class desk on this page's clock and this device's storage. What another tab takes in is seen here, too. */
export function newClassDesk(): ClassDesk {
  const { classPlace } = siteStorage();
  const desk = new ClassDesk({ now: () => performance.now(), pause: yieldToPage, kept: classPlace });
  addEventListener('storage', ({ key }) => {
    if (key === classPlace.key || key === null) desk.bringBack();
  });
  return desk;
}
