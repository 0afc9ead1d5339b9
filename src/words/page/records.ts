import { counted, plural } from '../en/grammar.ts';
import { fixed, megabytes } from '../numbers.ts';
import { localDayAndTime, localTime } from '../dates.ts';

/** What the list says of an experiment. @param changedAt  ISO 8601; '' where it isn't known */
export function entryWords(
  markCount: number,
  placeCount: number,
  changedAt: string,
  isOpen: boolean,
): string {
  return [
    `${counted(markCount, 'mark')}, ${counted(placeCount, 'place')}`,
    ...(changedAt === '' ? [] : [localDayAndTime(changedAt)]),
    ...(isOpen ? ['open now'] : []),
  ].join(' · ');
}

/** What is said of one kept sound. */
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
  const found = marks.length === 0 ? '' : ` · ${plural(marks.length, 'mark')} ${marks.join(', ')}`;
  return `${number}. ${localTime(createdAt)} · ${fixed(lengthS, 1)} s · ${fixed(forkHz, 0)} Hz · ${megabytes(bytes)}${found}`;
}
