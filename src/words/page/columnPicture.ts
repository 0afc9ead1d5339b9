import type { Experiment } from '../../notebook/experiment.ts';
import { fixed, ordinal } from '../numbers.ts';
import { nowWords } from './stage.ts';

/** A mark as it stands on the rule. */
interface MarkOnRule {
  /** Rule reading. */
  readonly lengthM: number;
  readonly order: number | null;
}

/** Nobody listens to more lengths than these. */
const MOST_NAMED = 30;

/**
 * The column's picture in words, for those who don't see it.
 * @param lengthM  as drawn; null where a real column is heard, whose length nobody has told
 */
export function columnWords(
  experiment: Experiment,
  lengthM: number | null,
  stems: readonly MarkOnRule[],
): string {
  const drawn =
    lengthM === null
      ? ''
      : `, drawn at ${fixed((lengthM + experiment.rule.zeroOffsetM) * 100, 1)} cm on the rule`;
  const marks = stems.map(
    (stem) =>
      `${stem.order === null ? '' : `${ordinal(stem.order)} resonance `}at ${fixed(stem.lengthM * 100, 1)} cm`,
  );
  const more = marks.length > MOST_NAMED ? ` and ${marks.length - MOST_NAMED} more` : '';
  const list =
    marks.length === 0
      ? 'No marks on the rule yet.'
      : `Marks: ${marks.slice(0, MOST_NAMED).join(', ')}${more}.`;
  return `Air column ${nowWords.ends[experiment.present.ends]}${drawn}. ${list}`;
}

/** What is written into the picture and on its handle. */
export const columnLabels = {
  handle: 'Length of the column',
  reading: (readingM: number) => `${fixed(readingM * 100, 1)} cm on the rule`,
  notSet: 'not set',
  unit: 'cm',
  node: 'N',
  antinode: 'A',
  /** At a mark; the order stands before it where it is known. */
  mark: ({ order, lengthM, passes }: MarkOnRule & { readonly passes: number }) =>
    `${order === null ? '' : `${ordinal(order)} · `}${fixed(lengthM * 100, 1)}${passes === 1 ? '' : ` · ${passes}×`}`,
} as const;
