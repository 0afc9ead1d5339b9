import type { BudgetLine, BudgetSource, Distribution, Solution } from '../solver/solution.ts';
import { counted } from './en/grammar.ts';
import { fixed, hertz, significant } from './numbers.ts';

/** The quantity whose uncertainty a line of the budget is. */
export function budgetQuantity(line: BudgetSource): string {
  switch (line.source) {
    case 'reading':
      return `Lengths: reading and finding the resonance${line.isWidened ? ', corrected by their scatter' : ''}`;
    case 'fork':
      return `Pitch of the fork ${hertz(line.frequencyHz)} Hz`;
    case 'loudest':
      return 'Loudest place beside the resonance';
    case 'zero':
      return 'Zero of the rule';
    case 'scale':
      return 'Scale of the rule';
    case 'end':
      return line.isFromTheory
        ? 'End correction as known of the mouth, over the radius'
        : 'End correction as tubes usually have it';
    case 'wall':
      return line.isRemoved ? 'Slowing by the walls' : 'Slowing by the walls, not removed';
  }
}

const DISTRIBUTIONS: Readonly<Record<Distribution, string>> = {
  normal: 'normal',
  rectangular: 'rectangular',
  arcsine: 'arcsine',
};

/** What the letters in the column Type mean. */
export const budgetTypes =
  'Type A: from the lengths’ own scatter. Type B: from what else is known, as a stamp or an instrument. Sensitivity: m/s by which the speed changes for one unit of the quantity. (JCGM 100:2008, 4.2, 4.3 and 5.1)';

/** One line of the uncertainty budget in rounded words. */
export interface BudgetRow {
  readonly quantity: string;
  readonly uncertainty: string;
  /** Type A or B. */
  readonly evaluation: string;
  readonly distribution: string;
  readonly sensitivity: string;
  readonly contribution: string;
  readonly degrees: string;
  /** Part of the combined variance. */
  readonly share: string;
}

/** The budget with the largest contribution first, each with its share of the combined variance. */
export function budgetRows(budget: readonly BudgetLine[]): readonly BudgetRow[] {
  const total = budget.reduce((sum, line) => sum + line.contributionMps ** 2, 0);
  return [...budget]
    .sort((one, other) => other.contributionMps ** 2 - one.contributionMps ** 2)
    .map((line) => ({
      quantity: budgetQuantity(line),
      uncertainty: `${significant(line.standardUncertainty, 2)}${line.unit === '1' ? '' : ` ${line.unit}`}`,
      evaluation: line.evaluation,
      distribution: DISTRIBUTIONS[line.distribution],
      sensitivity: sensitivityWords(line),
      contribution: `${fixed(Math.abs(line.contributionMps), 2)} m/s`,
      degrees: Number.isFinite(line.degreesOfFreedom) ? fixed(line.degreesOfFreedom, 0) : '∞',
      share: total > 0 ? `${fixed((100 * line.contributionMps ** 2) / total, 0)} %` : '0 %',
    }));
}

/** A line in m/s adds what it is; one of nothing says nothing. */
function sensitivityWords({ unit, sensitivity, standardUncertainty }: BudgetLine): string {
  if (sensitivity === null) return standardUncertainty === 0 ? '–' : '1';
  const size = significant(Math.abs(sensitivity), 2);
  switch (unit) {
    case '1':
      return `${size} m/s`;
    case 'm':
      return `${significant(Math.abs(sensitivity) / 1000, 2)} m/s per mm`;
    case 'Hz':
      return `${size} m/s per Hz`;
    case 'm/s':
      return '1';
  }
}

/** What belongs to a budget beside its lines. */
export interface BudgetFact {
  readonly name: string;
  readonly value: string;
}

/** How speed and end correction go together, how well u is known, and how well readings repeat. */
export function budgetFacts(solution: Solution): readonly BudgetFact[] {
  const { speedEndCorrelation, effectiveDegreesOfFreedom, repeatability } = solution;
  return [
    {
      name: 'Correlation of speed and end correction',
      value: `r(v, e) = ${fixed(speedEndCorrelation, 2)}`,
    },
    {
      name: 'Effective degrees of freedom',
      value: Number.isFinite(effectiveDegreesOfFreedom)
        ? `ν = ${fixed(effectiveDegreesOfFreedom, 0)}, by Welch and Satterthwaite`
        : 'ν = ∞',
    },
    ...(repeatability === null
      ? []
      : [
          {
            name: 'Repeatability of one reading',
            value: `s = ${significant(1000 * repeatability.standardDeviationM, 2)} mm, Type A, from ${counted(repeatability.degreesOfFreedom, 'degree')} of freedom`,
          },
        ]),
  ];
}
