import type { Experiment } from '../../notebook/experiment.ts';
import { words } from '../inUse.ts';
import { ordinal } from '../en/grammar.ts';
import { fixed } from '../numbers.ts';

/** A mark as it stands on the rule. */
export interface MarkOnRule {
  /** Rule reading. */
  readonly lengthM: number;
  readonly order: number | null;
  /** What was heard there may well be no resonance. */
  readonly isUnsure: boolean;
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
      `${stem.isUnsure ? 'perhaps ' : ''}${stem.order === null ? '' : `${ordinal(stem.order)} resonance `}at ${fixed(stem.lengthM * 100, 1)} cm`,
  );
  const more = marks.length > MOST_NAMED ? ` and ${marks.length - MOST_NAMED} more` : '';
  const list =
    marks.length === 0
      ? 'No marks on the rule yet.'
      : `Marks: ${marks.slice(0, MOST_NAMED).join(', ')}${more}.`;
  return `Air column ${words.endsLong[experiment.present.ends]}${drawn}. ${list}`;
}
