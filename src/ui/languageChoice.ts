import { scopedName, siteScope } from '../notebook/siteScope.ts';
import { speakFirst, speakLater, words } from '../words/inUse.ts';
import { LANGUAGE_TAGS, language } from '../words/language.ts';
import type { Language } from '../words/language.ts';
import { FIRST_TEXTS, LATER_TEXTS } from '../words/loadTexts.ts';

/** Before anything is said: the texts that the page begins with. English where the chosen ones can't be had. */
export async function startLanguage(page: Document): Promise<void> {
  const chosen = languageChoice();
  try {
    await speak(chosen, page);
  } catch (error) {
    if (chosen === 'en') throw error;
    await speak('en', page);
  }
}

/** The texts of what is opened later; there at once when they were asked for before. */
export async function laterTexts(): Promise<void> {
  const asked = language;
  const later = await LATER_TEXTS[asked]();
  // Another language may have been chosen while they were on their way.
  if (asked === language) speakLater(later);
}

/**
 * Says everything in another language from now on, and remembers that where it is allowed.
 * @throws what loading throws; then nothing has changed
 */
export async function chooseLanguage(chosen: Language, page: Document): Promise<void> {
  const [first, later] = await Promise.all([FIRST_TEXTS[chosen](), LATER_TEXTS[chosen]()]);
  speakFirst(chosen, first);
  speakLater(later);
  dress(page);
  try {
    localStorage.setItem(ownKey(), chosen);
  } catch {
    // Storage is refused: the page says so elsewhere, and the choice holds for this visit.
  }
}

/** Takes the choice out of the browser. */
export function forgetLanguage(): void {
  try {
    localStorage.removeItem(ownKey());
  } catch {
    // Storage is refused: nothing was remembered.
  }
}

async function speak(chosen: Language, page: Document): Promise<void> {
  const first = await FIRST_TEXTS[chosen]();
  speakFirst(chosen, first);
  dress(page);
}

/** What stands around the page's elements: the document's language, its title, and what it is called when installed. */
function dress(page: Document): void {
  page.documentElement.lang = language;
  page.title = words.frame.heading;
  const manifest = page.querySelector<HTMLLinkElement>('link[rel="manifest"]');
  const tag: string = language;
  if (manifest !== null) manifest.href = tag === 'en' ? './site.webmanifest' : `./site.${tag}.webmanifest`;
}

/** The one chosen on this device, else the first of the browser's that the page has, else English. */
function languageChoice(): Language {
  const wanted = [storedChoice(), ...navigator.languages];
  return wanted.map(offeredLanguage).find((offered) => offered !== null) ?? 'en';
}

/** The page's language for a tag (BCP 47): de-AT is German. Null where it has none. */
export function offeredLanguage(tag: string): Language | null {
  const primary = tag.split('-')[0]?.toLowerCase();
  return (
    LANGUAGE_TAGS.find((one) => one.toLowerCase() === tag.toLowerCase()) ??
    LANGUAGE_TAGS.find((one) => one.split('-')[0] === primary) ??
    null
  );
}

function storedChoice(): string {
  try {
    return localStorage.getItem(ownKey()) ?? '';
  } catch {
    return '';
  }
}

function ownKey(): string {
  return scopedName('language', siteScope());
}
