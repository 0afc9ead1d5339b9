import type { Experiment } from '../notebook/experiment.ts';
import { placeLabels } from '../notebook/placeLabels.ts';
import type { Comparison, ExpectedDifference, NoComparison } from '../solver/compare.ts';
import { laterWords } from './inUse.ts';
import type { NameMark } from './markNames.ts';
import { fixed, significant, stampedHertz } from './numbers.ts';
import { solverWarningMessage } from './solverWarnings.ts';

/** What people call the group that a comparison knows by this key. */
export type NameGroup = (key: string) => string;

/** Whether two groups differ, by how much, and what theory expects of them. */
export function comparisonWords(comparison: Comparison, nameGroup: NameGroup): string {
  const { differenceMps, expected } = comparison;
  const [one, other] = [nameGroup(comparison.one), nameGroup(comparison.other)];
  const way = !comparison.isReal ? 'alike' : differenceMps > 0 ? 'faster' : 'slower';
  const found = laterWords.comparison[way](
    one,
    other,
    significant(Math.abs(differenceMps), 2),
    significant(comparison.expandedUncertaintyMps, 2),
  );
  return expected === null ? found : `${found} ${expectedWords(expected)}`;
}

/** Differences that round to nothing are none. */
const LEAST_EXPECTED_MPS = 0.05;

function expectedWords({ differenceMps, agrees }: ExpectedDifference): string {
  const said = agrees ? laterWords.comparison.agrees : laterWords.comparison.disagrees;
  if (Math.abs(differenceMps) < LEAST_EXPECTED_MPS) return said.alike;
  const size = fixed(Math.abs(differenceMps), 1);
  return differenceMps > 0 ? said.faster(size) : said.slower(size);
}

/** Which of two groups has no result, and why. */
export function noComparisonWords(
  { warnings }: NoComparison,
  nameGroup: NameGroup,
  nameMark: NameMark,
): readonly string[] {
  return warnings.map(({ key, warning }) =>
    laterWords.comparison.noResult(nameGroup(key), solverWarningMessage(warning, nameMark)),
  );
}

/** Groups of an experiment's marks, put together by their place, fork or ends. */
export function groupNames(experiment: Experiment, by: 'place' | 'fork' | 'ends'): NameGroup {
  switch (by) {
    case 'place':
      return nameIn(placeLabels(experiment));
    case 'fork':
      return nameIn(
        new Map(
          experiment.forks.map(({ id, nominalHz }) => [
            id,
            laterWords.comparison.fork(stampedHertz(nominalHz)),
          ]),
        ),
      );
    case 'ends':
      return (key) => laterWords.comparison.ends[key === 'closed' ? 'closed' : 'open'];
  }
}

function nameIn(names: ReadonlyMap<string, string>): NameGroup {
  return (key) => names.get(key) ?? '?';
}
