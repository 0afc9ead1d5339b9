import { counted, fixed } from './numbers.ts';

/** 2030-03-01T10:00:00.000Z as 2030-03-01 10:00 (UTC, as stored). @param time  ISO 8601 */
export function dayAndTime(time: string): string {
  return time.slice(0, 16).replace('T', ' ');
}

/** Day and time as the browser's owner writes them, in the local zone. @param time  ISO 8601 */
export function localDayAndTime(time: string): string {
  return new Date(time).toLocaleString();
}

/** The time of day as the browser's owner writes it, in the local zone. @param time  ISO 8601 */
export function localTime(time: string): string {
  return new Date(time).toLocaleTimeString();
}

const MINUTE_S = 60;
const HOUR_S = 3600;

/** How long ago something was, as coarse as a person needs it; from an hour on the time of day. */
export function ageWords(createdAt: string, nowMs: number): string {
  const made = new Date(createdAt);
  const ageS = (nowMs - made.getTime()) / 1000;
  if (!(ageS < HOUR_S)) return `at ${localTime(createdAt)}`;
  if (ageS < 10) return 'just now';
  if (ageS < MINUTE_S) return `${fixed(Math.floor(ageS / 10) * 10, 0)} s ago`;
  return `${counted(Math.floor(ageS / MINUTE_S), 'minute')} ago`;
}
