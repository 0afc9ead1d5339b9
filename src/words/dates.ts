import { LANGUAGES, language } from './language.ts';

/**
 * Day and time as they are stored (UTC), so that they read the same everywhere: 1 Mar 2030, 10:00.
 * @param time  ISO 8601; a record may hold anything: what is no time stands as it is
 */
export function dayAndTime(time: string): string {
  const form = { dateStyle: 'medium', timeStyle: 'short', hourCycle: 'h23', timeZone: 'UTC' } as const;
  return timeWords(time, (date) => date.toLocaleString(LANGUAGES[language].locale, form));
}

/** Day and time as the browser's owner writes them, in the local zone. @param time  as above */
export function localDayAndTime(time: string): string {
  return timeWords(time, (date) => date.toLocaleString(usual()));
}

/** The time of day as the browser's owner writes it, in the local zone. @param time  as above */
export function localTime(time: string): string {
  return timeWords(time, (date) => date.toLocaleTimeString(usual()));
}

function timeWords(time: string, write: (date: Date) => string): string {
  const date = new Date(time);
  return Number.isNaN(date.getTime()) ? time : write(date);
}

/** The browser's own way with dates where it speaks this language (British, American …), else the language's. */
function usual(): string | undefined {
  const own = new Intl.DateTimeFormat().resolvedOptions().locale;
  return own.split('-')[0] === language.split('-')[0] ? undefined : language;
}
