import type { NoSolution, Solution } from '../solver/solution.ts';
import { fixed, roundPair, signed } from './rounding.ts';
import type { RoundedPair } from './rounding.ts';

/** A result in rounded words, ready to show or print. */
export interface ResultLines {
  /** m/s with its expanded uncertainty; null where no speed can be given. */
  readonly speed: RoundedPair | null;
  readonly facts: readonly { readonly name: string; readonly value: string }[];
  readonly warnings: readonly string[];
}

const SOURCE_WORDS = {
  measured: 'measured',
  theory: 'from theory',
  assumed: 'assumed',
} as const;

/** Rounds a solution: the speed, its uncertainty, the end correction, and how it compares with theory. */
export function resultLines(solution: Solution | NoSolution): ResultLines {
  const warnings = solution.warnings.map((warning) => warning.message);
  if (solution.speedMps === null) return { speed: null, facts: [], warnings };
  const end = roundPair(
    solution.endCorrectionM * 1000,
    Math.max(solution.endCorrectionStandardUncertaintyM * 1000, 0.01),
  );
  const percent = coverage(solution.coverageFactor);
  return {
    speed: roundPair(solution.speedMps, solution.expandedUncertaintyMps),
    facts: [
      { name: 'Uncertainty', value: percent },
      {
        name: 'End correction',
        value: `${end.value} ± ${end.uncertainty} mm, ${SOURCE_WORDS[solution.endCorrectionSource]}`,
      },
      ...theoryFacts(solution),
    ],
    warnings,
  };
}

function coverage(factor: number): string {
  return `95 % coverage, k = ${fixed(factor, 2)}`;
}

/** The difference to theory, and whether it is larger than both expanded uncertainties allow (E_n within ±1). */
function theoryFacts(solution: Solution): { name: string; value: string }[] {
  const { theory, agreement } = solution;
  if (theory === null || agreement === null) {
    return [{ name: 'Theory', value: 'note the air’s temperature to compare' }];
  }
  const pair = roundPair(theory.speedMps, 2 * theory.standardUncertaintyMps);
  const decimals = Math.max(1, pair.uncertainty.split('.').at(1)?.length ?? 0);
  const isApart = Math.abs(agreement.normalisedError) > 1;
  return [
    { name: 'Theory', value: `${pair.value} ± ${pair.uncertainty} m/s` },
    {
      name: 'Difference',
      value: `${signed(agreement.differenceMps, decimals)} m/s, ${isApart ? 'more than the uncertainties explain' : 'within the uncertainties'}`,
    },
  ];
}
