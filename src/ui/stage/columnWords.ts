import type { Experiment } from '../../notebook/experiment.ts';
import { fixed, ordinal } from '../../report/rounding.ts';
import type { Stem } from './columnScene.ts';

/** Nobody listens to more lengths than these. */
const MOST_NAMED = 30;

/** The column's picture in words, for those who don't see it. */
export function columnWords(experiment: Experiment, lengthM: number, stems: readonly Stem[]): string {
  const ends = experiment.present.ends === 'closed' ? 'closed at one end' : 'open at both ends';
  const reading = fixed((lengthM + experiment.rule.zeroOffsetM) * 100, 1);
  const marks = stems.map(
    (stem) =>
      `${stem.order === null ? '' : `${ordinal(stem.order)} resonance `}at ${fixed(stem.lengthM * 100, 1)} cm`,
  );
  const more = marks.length > MOST_NAMED ? ` and ${marks.length - MOST_NAMED} more` : '';
  const list =
    marks.length === 0
      ? 'No marks on the rule yet.'
      : `Marks: ${marks.slice(0, MOST_NAMED).join(', ')}${more}.`;
  return `Air column ${ends}, drawn at ${reading} cm on the rule. ${list}`;
}
