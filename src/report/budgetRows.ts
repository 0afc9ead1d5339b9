import type { BudgetLine } from '../solver/solution.ts';
import { significant } from '../solver/wording.ts';
import { fixed } from './rounding.ts';

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
      quantity: line.quantity,
      uncertainty: `${significant(line.standardUncertainty, 2)}${line.unit === '1' ? '' : ` ${line.unit}`}`,
      contribution: `${fixed(Math.abs(line.contributionMps), 2)} m/s`,
      share: total > 0 ? `${fixed((100 * line.contributionMps ** 2) / total, 0)} %` : '0 %',
    }));
}
