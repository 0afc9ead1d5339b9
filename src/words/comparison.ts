import type { Experiment } from '../notebook/experiment.ts';
import { placeLabels } from '../notebook/placeLabels.ts';
import type { Comparison, NoComparison } from '../solver/compare.ts';
import type { NameMark } from './markNames.ts';
import { fixed, significant, stampedHertz } from './numbers.ts';
import { solverWarningMessage } from './solverWarnings.ts';

/** What people call the group that a comparison knows by this key. */
export type NameGroup = (key: string) => string;

/** Whether two groups differ, by how much, and what theory expects of them. */
export function comparisonWords(comparison: Comparison, nameGroup: NameGroup): string {
  const { differenceMps, expected } = comparison;
  const [one, other] = [nameGroup(comparison.one), nameGroup(comparison.other)];
  const size = significant(Math.abs(differenceMps), 2);
  const doubt = significant(comparison.expandedUncertaintyMps, 2);
  const found = comparison.isReal
    ? `Sound is ${size} m/s ${differenceMps > 0 ? 'faster' : 'slower'} in ${one} than in ${other}, ± ${doubt} m/s (95 %): a real difference.`
    : `${one} and ${other} differ by ${size} m/s, ± ${doubt} m/s (95 %): no difference that these marks can show.`;
  return expected === null
    ? found
    : `${found} Theory expects ${fixed(expected.differenceMps, 1)} m/s for their air, which ${expected.agrees ? 'agrees' : 'does not agree'}.`;
}

/** Which of two groups has no result, and why. */
export function noComparisonWords(
  { warnings }: NoComparison,
  nameGroup: NameGroup,
  nameMark: NameMark,
): readonly string[] {
  return warnings.map(({ key, warning }) => `${nameGroup(key)}: ${solverWarningMessage(warning, nameMark)}`);
}

/** Groups of an experiment's marks, put together by their place, fork or ends. */
export function groupNames(experiment: Experiment, by: 'place' | 'fork' | 'ends'): NameGroup {
  switch (by) {
    case 'place':
      return nameIn(placeLabels(experiment));
    case 'fork':
      return nameIn(
        new Map(
          experiment.forks.map(({ id, nominalHz }) => [id, `the fork of ${stampedHertz(nominalHz)} Hz`]),
        ),
      );
    case 'ends':
      return (key) => (key === 'closed' ? 'the closed column' : 'the open column');
  }
}

function nameIn(names: ReadonlyMap<string, string>): NameGroup {
  return (key) => names.get(key) ?? '?';
}
