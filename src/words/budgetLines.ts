import type { BudgetLine, BudgetSource } from '../solver/solution.ts';
import { fixed, hertz, significant } from './numbers.ts';

/** The quantity whose uncertainty a line of the budget is. */
export function budgetQuantity(line: BudgetSource): string {
  switch (line.source) {
    case 'reading':
      return `Lengths: reading and finding the resonance${line.isWidened ? ', widened by their scatter' : ''}`;
    case 'fork':
      return `Pitch of the fork ${hertz(line.frequencyHz)} Hz`;
    case 'loudest':
      return 'Loudest place beside the resonance';
    case 'zero':
      return 'Zero of the rule';
    case 'scale':
      return 'Scale of the rule';
    case 'end':
      return line.isFromTheory ? 'End correction from theory, over the radius' : 'End correction, unknown';
    case 'wall':
      return line.isRemoved ? 'Slowing by the walls' : 'Slowing by the walls, not removed';
  }
}

/** One line of the uncertainty budget in rounded words. */
export interface BudgetRow {
  readonly quantity: string;
  readonly uncertainty: string;
  readonly contribution: string;
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
      contribution: `${fixed(Math.abs(line.contributionMps), 2)} m/s`,
      share: total > 0 ? `${fixed((100 * line.contributionMps ** 2) / total, 0)} %` : '0 %',
    }));
}
