import type { BudgetLine, BudgetSource, Solution } from '../solver/solution.ts';
import { laterWords } from './inUse.ts';
import { fixed, hertz, significant } from './numbers.ts';

/** The quantity whose uncertainty a line of the budget is. */
export function budgetQuantity(line: BudgetSource): string {
  const said = laterWords.budgetLine;
  switch (line.source) {
    case 'reading':
      return line.isWidened ? said.readingWidened : said.reading;
    case 'fork':
      return said.fork(hertz(line.frequencyHz));
    case 'loudest':
      return said.loudest;
    case 'zero':
      return said.zero;
    case 'scale':
      return said.scale;
    case 'end':
      return line.isFromTheory ? said.endOfMouth : said.endOfTubes;
    case 'wall':
      return line.isRemoved ? said.wall : said.wallLeft;
  }
}

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
      distribution: laterWords.budgetLine.distributions[line.distribution],
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
      return laterWords.budgetLine.perMillimetre(significant(Math.abs(sensitivity) / 1000, 2));
    case 'Hz':
      return laterWords.budgetLine.perHertz(size);
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
  const said = laterWords.budgetLine;
  const degrees = Number.isFinite(effectiveDegreesOfFreedom) ? fixed(effectiveDegreesOfFreedom, 0) : null;
  return [
    { name: said.correlation, value: `r(v, e) = ${fixed(speedEndCorrelation, 2)}` },
    { name: said.degrees, value: degrees === null ? 'ν = ∞' : said.degreesBy(degrees) },
    ...(repeatability === null
      ? []
      : [
          {
            name: said.repeatability,
            value: said.repeatabilityFrom(
              significant(1000 * repeatability.standardDeviationM, 2),
              repeatability.degreesOfFreedom,
            ),
          },
        ]),
  ];
}
