import type { FirstWords, LaterWords } from './catalogue.ts';
import { setLanguage } from './language.ts';
import type { Language } from './language.ts';

/*
 * The texts of the language in use. With it they are the one state at module level: what is said is said in one
 * language, by the page, its drawings and its files alike. They are set before anything is said, and again when a
 * person chooses another language; whoever shows a text then asks for it anew.
 */

/** The texts that are there from the start. */
export let words: FirstWords;

/** The texts that come with the views that are opened later. None may be asked for before `speakLater`. */
export let laterWords: LaterWords;

/** Says in this language, from now on, what is said from the start. */
export function speakFirst(chosen: Language, first: FirstWords): void {
  setLanguage(chosen);
  words = first;
}

/** Says in this language what is said later, too. @param later  of the language in use */
export function speakLater(later: LaterWords): void {
  laterWords = later;
}
