import * as first from './en/first.ts';
import * as later from './en/later.ts';
import { speakFirst, speakLater } from './inUse.ts';

/** Says everything in English, where there is no page whose language a person could choose. */
export function speakEnglish(): void {
  speakFirst('en', first);
  speakLater(later);
}
