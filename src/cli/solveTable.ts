import { readMarksTable } from '../marks/marksTable.ts';
import { marksOfRows } from '../solver/marksOfRows.ts';
import type { BudgetLine, NoSolution, Solution, SolverMark } from '../solver/solution.ts';
import { solve } from '../solver/solve.ts';
import { solveAll } from '../solver/solveAll.ts';
import type { SolverWarning, SolverWarningCode } from '../solver/solverWarning.ts';
import { budgetQuantity } from '../words/budgetLines.ts';
import { outlierCauseWords } from '../words/outlierCauses.ts';
import { solverWarningMessage, solverWarningWords } from '../words/solverWarnings.ts';
import { tableFaultsWords } from '../words/tableFaults.ts';
import { tableWarningWords } from '../words/tableWarnings.ts';
import type { TableWarning } from '../words/tableWarnings.ts';
import { workingStepWords } from '../words/workingSteps.ts';
import type { StepWords } from '../words/workingSteps.ts';
import { findTableWarnings } from './findTableWarnings.ts';

/** What the command says about one table; the keys are a contract. Speeds are for free air. */
export interface SolvedTable {
  readonly speedMps: number;
  readonly standardUncertaintyMps: number;
  readonly expandedUncertaintyMps: number;
  readonly coverageFactor: number;
  readonly endCorrectionM: number;
  readonly endCorrectionStandardUncertaintyM: number;
  readonly endCorrectionSource: Solution['endCorrectionSource'];
  /** r(v, e). */
  readonly speedEndCorrelation: number;
  readonly effectiveDegreesOfFreedom: number;
  readonly repeatability: Solution['repeatability'];
  readonly theory: Solution['theory'];
  readonly agreement: Solution['agreement'];
  readonly marks: readonly {
    readonly row: number;
    readonly order: number;
    readonly orderConfidence: number;
    readonly residualM: number;
    readonly outlier: boolean;
    readonly cause: string | null;
  }[];
  readonly warnings: readonly WrittenWarning[];
  readonly budget: readonly WrittenBudgetLine[];
  readonly working: readonly StepWords[];
  /** Each place by itself; absent where the table has one place only. */
  readonly places?: readonly PlaceSummary[];
}

/** A finding as its code and its sentence. */
export interface WrittenWarning {
  readonly code: SolverWarningCode | TableWarning['code'];
  readonly message: string;
}

export type WrittenBudgetLine = { readonly quantity: string } & Pick<
  BudgetLine,
  | 'standardUncertainty'
  | 'unit'
  | 'evaluation'
  | 'distribution'
  | 'sensitivity'
  | 'contributionMps'
  | 'degreesOfFreedom'
>;

export interface PlaceSummary {
  readonly place: string;
  readonly speedMps: number | null;
  readonly standardUncertaintyMps: number | null;
  readonly expandedUncertaintyMps: number | null;
  readonly theory: Solution['theory'];
  readonly warnings: readonly WrittenWarning[];
}

/** Places beyond this many are part of the common result but get no answer of their own. */
const MOST_PLACES = 40;

/**
 * Solves a table of marks.
 * @param text  CSV
 * @returns the result, or what is wrong with the table
 */
export function solveTable(text: string): SolvedTable | { readonly error: string } {
  const table = readMarksTable(text);
  if (!table.ok) return { error: tableFaultsWords(table.faults) };
  const rows = table.rows.filter(({ excluded }) => !excluded);
  const marks = marksOfRows(rows);
  const solution = solve(marks);
  if (solution.speedMps === null) {
    return { error: solverWarningWords(solution.warnings, nameRow).join(' ') };
  }

  const placeCount = new Set(rows.map(({ place }) => place)).size;
  return {
    speedMps: solution.speedMps,
    standardUncertaintyMps: solution.standardUncertaintyMps,
    expandedUncertaintyMps: solution.expandedUncertaintyMps,
    coverageFactor: solution.coverageFactor,
    endCorrectionM: solution.endCorrectionM,
    endCorrectionStandardUncertaintyM: solution.endCorrectionStandardUncertaintyM,
    endCorrectionSource: solution.endCorrectionSource,
    speedEndCorrelation: solution.speedEndCorrelation,
    effectiveDegreesOfFreedom: solution.effectiveDegreesOfFreedom,
    repeatability: solution.repeatability,
    theory: solution.theory,
    agreement: solution.agreement,
    marks: solution.marks.map(({ key, order, orderConfidence, residualM, outlier, cause }) => ({
      row: Number(key),
      order,
      orderConfidence,
      residualM,
      outlier,
      cause: cause === null ? null : outlierCauseWords(cause),
    })),
    warnings: [
      ...writeWarnings(solution.warnings),
      ...findTableWarnings(rows, table.passedOver).map((warning) => ({
        code: warning.code,
        message: tableWarningWords(warning),
      })),
    ],
    budget: solution.budget.map(writeBudgetLine),
    working: solution.working.map(workingStepWords),
    ...(placeCount > 1 ? { places: summarisePlaces(marks) } : {}),
  };
}

function summarisePlaces(marks: readonly SolverMark[]): PlaceSummary[] {
  const names = [...new Set(marks.map(({ place }) => place))].slice(0, MOST_PLACES);
  return solveAll(marks.filter(({ place }) => names.includes(place))).map(
    (solution: Solution | NoSolution): PlaceSummary =>
      solution.speedMps === null
        ? {
            place: solution.place,
            speedMps: null,
            standardUncertaintyMps: null,
            expandedUncertaintyMps: null,
            theory: null,
            warnings: writeWarnings(solution.warnings),
          }
        : {
            place: solution.place,
            speedMps: solution.speedMps,
            standardUncertaintyMps: solution.standardUncertaintyMps,
            expandedUncertaintyMps: solution.expandedUncertaintyMps,
            theory: solution.theory,
            warnings: writeWarnings(solution.warnings),
          },
  );
}

/** Rows go by their number in the file. */
function nameRow(key: string): string {
  return `row ${key}`;
}

function writeWarnings(warnings: readonly SolverWarning[]): WrittenWarning[] {
  return warnings.map((warning) => ({
    code: warning.code,
    message: solverWarningMessage(warning, nameRow),
  }));
}

function writeBudgetLine(line: BudgetLine): WrittenBudgetLine {
  return {
    quantity: budgetQuantity(line),
    standardUncertainty: line.standardUncertainty,
    unit: line.unit,
    evaluation: line.evaluation,
    distribution: line.distribution,
    sensitivity: line.sensitivity,
    contributionMps: line.contributionMps,
    degreesOfFreedom: line.degreesOfFreedom,
  };
}
