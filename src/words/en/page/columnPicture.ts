import { ordinal } from '../grammar.ts';
import { fixed } from '../../numbers.ts';

/** What is written into the picture and on its handle. */
export const columnLabels = {
  handle: 'Length of the column',
  reading: (readingM: number) => `${fixed(readingM * 100, 1)} cm on the rule`,
  notSet: 'not set',
  unit: 'cm',
  node: 'N',
  antinode: 'A',
  /** At a mark; the order stands before it where it is known. */
  mark: (order: number | null, lengthM: number, passes: number, isUnsure: boolean) =>
    `${order === null ? '' : `${ordinal(order)} · `}${fixed(lengthM * 100, 1)}${passes === 1 ? '' : ` · ${passes}×`}${isUnsure ? '?' : ''}`,
};
