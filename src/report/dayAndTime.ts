/** 2030-03-01T10:00:00.000Z as 2030-03-01 10:00 (UTC, as stored). @param time  ISO 8601 */
export function dayAndTime(time: string): string {
  return time.slice(0, 16).replace('T', ' ');
}
