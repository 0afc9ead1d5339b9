import { localTime } from './dates.ts';
import { counted } from './en/grammar.ts';
import { fixed } from './numbers.ts';

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
