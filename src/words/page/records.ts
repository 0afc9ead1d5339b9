import { fixed, megabytes } from '../numbers.ts';
import { localDayAndTime, localTime } from '../dates.ts';
import { laterWords } from '../inUse.ts';

/** What the list says of an experiment. @param changedAt  ISO 8601; '' where it isn't known */
export function entryWords(
  markCount: number,
  placeCount: number,
  changedAt: string,
  isOpen: boolean,
): string {
  return [
    laterWords.experiments.counts(markCount, placeCount),
    ...(changedAt === '' ? [] : [localDayAndTime(changedAt)]),
    ...(isOpen ? [laterWords.experiments.openNow] : []),
  ].join(' · ');
}

/** What is said of one saved sound. */
export interface SpokenSound {
  readonly number: number;
  /** ISO 8601. */
  readonly createdAt: string;
  readonly lengthS: number;
  readonly forkHz: number;
  readonly bytes: number;
  /** Numbers of the marks that were found in it. */
  readonly marks: readonly number[];
}

export function keptSoundWords({ number, createdAt, lengthS, forkHz, bytes, marks }: SpokenSound): string {
  return [
    `${number}. ${localTime(createdAt)}`,
    `${fixed(lengthS, 1)} s`,
    `${fixed(forkHz, 0)} Hz`,
    megabytes(bytes),
    ...(marks.length === 0 ? [] : [laterWords.sounds.marks(marks.length, marks.join(', '))]),
  ].join(' · ');
}
