import type { NoSolution, Solution } from '../solver/solution.ts';
import { decimalsOf, fixed, roundPair, signed } from './numbers.ts';
import type { RoundedPair } from './numbers.ts';

/** A result in rounded words, ready to show or print. */
export interface ResultLines {
  /** m/s with its expanded uncertainty; null where no speed can be given. */
  readonly speed: RoundedPair | null;
  readonly facts: readonly ResultFact[];
}

/** One thing that is said of a result beside its speed. */
export interface ResultFact {
  readonly kind: 'uncertainty' | 'end-correction' | 'theory' | 'difference';
  readonly name: string;
  readonly value: string;
}

const SOURCE_WORDS = {
  measured: 'measured',
  theory: 'from theory',
  assumed: 'assumed',
} as const;

/** A speed with its expanded uncertainty. */
export function speedWords({ value, uncertainty }: RoundedPair): string {
  return `${value} ± ${uncertainty} m/s`;
}

/** Rounds a solution: the speed, its uncertainty, the end correction, and how it compares with theory. */
export function resultLines(solution: Solution | NoSolution): ResultLines {
  if (solution.speedMps === null) return { speed: null, facts: [] };
  const end = roundPair(
    solution.endCorrectionM * 1000,
    Math.max(solution.endCorrectionStandardUncertaintyM * 1000, 0.01),
  );
  return {
    speed: roundPair(solution.speedMps, solution.expandedUncertaintyMps),
    facts: [
      { kind: 'uncertainty', name: 'Uncertainty', value: coverage(solution.coverageFactor) },
      {
        kind: 'end-correction',
        name: 'End correction',
        value: `${end.value} ± ${end.uncertainty} mm, ${SOURCE_WORDS[solution.endCorrectionSource]}`,
      },
      ...theoryFacts(solution),
    ],
  };
}

function coverage(factor: number): string {
  return `95 % coverage, k = ${fixed(factor, 2)}`;
}

/** The difference to theory, and whether it is larger than both expanded uncertainties allow (E_n within ±1). */
function theoryFacts(solution: Solution): ResultFact[] {
  const { theory, agreement } = solution;
  if (theory === null || agreement === null) {
    return [{ kind: 'theory', name: 'Theory', value: 'note the air’s temperature to compare' }];
  }
  const expandedMps = 2 * theory.standardUncertaintyMps;
  const pair = roundPair(theory.speedMps, expandedMps);
  const decimals = Math.max(1, decimalsOf(expandedMps));
  const isApart = Math.abs(agreement.normalisedError) > 1;
  return [
    { kind: 'theory', name: 'Theory', value: speedWords(pair) },
    {
      kind: 'difference',
      name: 'Difference',
      value: `${signed(agreement.differenceMps, decimals)} m/s, ${isApart ? 'more than the uncertainties explain' : 'within the uncertainties'}`,
    },
  ];
}
