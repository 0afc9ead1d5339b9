import { language } from './language.ts';

/** 2030-03-01T10:00:00.000Z as 2030-03-01 10:00 (UTC, as stored). @param time  ISO 8601 */
export function dayAndTime(time: string): string {
  return time.slice(0, 16).replace('T', ' ');
}

/** Day and time as the browser's owner writes them, in the local zone. @param time  ISO 8601 */
export function localDayAndTime(time: string): string {
  return new Date(time).toLocaleString(usual());
}

/** The time of day as the browser's owner writes it, in the local zone. @param time  ISO 8601 */
export function localTime(time: string): string {
  return new Date(time).toLocaleTimeString(usual());
}

/** The browser's own way with dates where it speaks this language (British, American …), else the language's. */
function usual(): string | undefined {
  const own = new Intl.DateTimeFormat().resolvedOptions().locale;
  return own.split('-')[0] === language.split('-')[0] ? undefined : language;
}
