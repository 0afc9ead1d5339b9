import type { Experiment } from '../../notebook/experiment.ts';
import { words } from '../inUse.ts';
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
  const said = words.columnSpoken;
  const drawnAt = lengthM === null ? [] : [said.drawnAt(centimetres(lengthM + experiment.rule.zeroOffsetM))];
  return [said.column[experiment.present.ends], ...drawnAt, marksOnRuleWords(stems)].join(' ');
}

function marksOnRuleWords(stems: readonly MarkOnRule[]): string {
  const said = words.columnSpoken;
  if (stems.length === 0) return said.noMarks;
  const named = stems.slice(0, MOST_NAMED).map(markOnRuleWords).join(', ');
  const more = stems.length - MOST_NAMED;
  return more > 0 ? said.marksAndMore(named, more) : said.marks(named);
}

function markOnRuleWords({ lengthM, order, isUnsure }: MarkOnRule): string {
  const { mark, perhapsMark, resonance, perhapsResonance } = words.columnSpoken;
  const at = centimetres(lengthM);
  if (order === null) return isUnsure ? perhapsMark(at) : mark(at);
  return isUnsure ? perhapsResonance(order, at) : resonance(order, at);
}

/** What stands at a mark in the picture: its order if known, its length, its passes, and whether it is doubtful. */
export function stemLabel({
  order,
  lengthM,
  isUnsure,
  passes,
}: MarkOnRule & { readonly passes: number }): string {
  const at = centimetres(lengthM);
  const parts = [
    order === null ? at : words.columnLabels.resonance(order, at),
    ...(passes === 1 ? [] : [`${passes}×`]),
  ];
  return `${parts.join(' · ')}${isUnsure ? '?' : ''}`;
}

/** Where on the rule the column ends, for the handle. */
export function ruleReadingWords(readingM: number): string {
  return words.columnLabels.reading(centimetres(readingM));
}

/** To the millimetre. */
function centimetres(lengthM: number): string {
  return fixed(lengthM * 100, 1);
}
