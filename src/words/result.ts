import type { NoSolution, Solution } from '../solver/solution.ts';
import { words } from './inUse.ts';
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

/** A speed with its expanded uncertainty. */
export function speedWords({ value, uncertainty }: RoundedPair): string {
  return `${value} ± ${uncertainty} m/s`;
}

/** Rounds a solution: the speed, its uncertainty, the end correction, and how it compares with theory. */
export function resultLines(solution: Solution | NoSolution): ResultLines {
  if (solution.speedMps === null) return { speed: null, facts: [] };
  const said = words.resultFact;
  const end = roundPair(
    solution.endCorrectionM * 1000,
    Math.max(solution.endCorrectionStandardUncertaintyM * 1000, 0.01),
  );
  return {
    speed: roundPair(solution.speedMps, solution.expandedUncertaintyMps),
    facts: [
      {
        kind: 'uncertainty',
        name: said.uncertainty,
        value: said.coverage(fixed(solution.coverageFactor, 2)),
      },
      {
        kind: 'end-correction',
        name: said.endCorrection,
        value: said.endFrom[solution.endCorrectionSource](end.value, end.uncertainty),
      },
      ...theoryFacts(solution),
    ],
  };
}

/** The difference to theory, and whether it is larger than both expanded uncertainties allow (E_n within ±1). */
function theoryFacts(solution: Solution): ResultFact[] {
  const said = words.resultFact;
  const { theory, agreement } = solution;
  if (theory === null || agreement === null) {
    return [{ kind: 'theory', name: said.theory, value: said.noTheory }];
  }
  const expandedMps = 2 * theory.standardUncertaintyMps;
  const pair = roundPair(theory.speedMps, expandedMps);
  const decimals = Math.max(1, decimalsOf(expandedMps));
  const difference = signed(agreement.differenceMps, decimals);
  const isApart = Math.abs(agreement.normalisedError) > 1;
  return [
    { kind: 'theory', name: said.theory, value: speedWords(pair) },
    {
      kind: 'difference',
      name: said.difference,
      value: isApart ? said.apart(difference) : said.within(difference),
    },
  ];
}
