import type { Experiment } from '../../notebook/experiment.ts';
import { fixed, ordinal } from '../../words/numbers.ts';
import type { Stem } from './columnScene.ts';

/** The column's picture in words, for those who don't see it. */
export function columnWords(experiment: Experiment, lengthM: number, stems: readonly Stem[]): string {
  const ends = experiment.present.ends === 'closed' ? 'closed at one end' : 'open at both ends';
  const reading = fixed((lengthM + experiment.rule.zeroOffsetM) * 100, 1);
  const marks = stems.map(
    (stem) =>
      `${stem.order === null ? '' : `${ordinal(stem.order)} resonance `}at ${fixed(stem.lengthM * 100, 1)} cm`,
  );
  const list = marks.length === 0 ? 'No marks on the rule yet.' : `Marks: ${marks.join(', ')}.`;
  return `Air column ${ends}, drawn at ${reading} cm on the rule. ${list}`;
}
