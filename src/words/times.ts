import { localTime } from './dates.ts';
import { words } from './inUse.ts';

const MINUTE_S = 60;
const HOUR_S = 3600;

/** How long ago something was, as coarse as a person needs it; from an hour on the time of day. */
export function ageWords(createdAt: string, nowMs: number): string {
  const made = new Date(createdAt);
  const ageS = (nowMs - made.getTime()) / 1000;
  if (!(ageS < HOUR_S)) return words.age.at(localTime(createdAt));
  if (ageS < 10) return words.age.justNow;
  if (ageS < MINUTE_S) return words.age.seconds(Math.floor(ageS / 10) * 10);
  return words.age.minutes(Math.floor(ageS / MINUTE_S));
}
