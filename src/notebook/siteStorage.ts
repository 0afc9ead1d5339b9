import { draftPlace } from './draftPlace.ts';
import { scopedName, siteScope } from './siteScope.ts';
import { tabMemory } from './tabMemory.ts';

/** What this copy of the site keeps in the browser beside its notebook. */
export function siteStorage(scope: string = siteScope()) {
  return {
    tabMemory: tabMemory(scopedName('open-experiment', scope)),
    draftPlace: draftPlace(scopedName('drafts', scope)),
    classPlace: draftPlace(scopedName('class', scope)),
  };
}
