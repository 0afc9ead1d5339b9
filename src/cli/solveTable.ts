import { OPTIONAL_COLUMNS } from '../marks/markColumns.ts';
import { describeFaults, readMarksTable } from '../marks/marksTable.ts';
import { STAMP_TOLERANCE, USUAL_LENGTH_STANDARD_UNCERTAINTY_M } from '../marks/usualUncertainties.ts';
import { marksOfRows, rowKey } from '../solver/marksOfRows.ts';
import type { NoSolution, Solution, SolverMark, SolverWarning } from '../solver/solution.ts';
import { solve } from '../solver/solve.ts';
import { solveAll } from '../solver/solveAll.ts';
import { listed } from '../solver/wording.ts';

/** What the command says about one table; the keys are a contract. Speeds are for free air. */
export interface SolvedTable {
  readonly speedMps: number;
  readonly standardUncertaintyMps: number;
  readonly expandedUncertaintyMps: number;
  readonly coverageFactor: number;
  readonly endCorrectionM: number;
  readonly endCorrectionStandardUncertaintyM: number;
  readonly endCorrectionSource: Solution['endCorrectionSource'];
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
  readonly warnings: readonly SolverWarning[];
  readonly budget: Solution['budget'];
  readonly working: Solution['working'];
  /** Each place by itself; absent where the table has one place only. */
  readonly places?: readonly PlaceSummary[];
}

export interface PlaceSummary {
  readonly place: string;
  readonly speedMps: number | null;
  readonly standardUncertaintyMps: number | null;
  readonly expandedUncertaintyMps: number | null;
  readonly theory: Solution['theory'];
  readonly warnings: readonly SolverWarning[];
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
  if (!table.ok) return { error: describeFaults(table.faults) };
  const rows = table.rows.filter(({ excluded }) => !excluded);
  const marks = marksOfRows(rows);
  const solution = solve(marks);
  if (solution.speedMps === null) return { error: solution.warnings.map(({ message }) => message).join(' ') };

  const rowOf = new Map(rows.map(({ row }) => [rowKey(row), row]));
  const warnings: SolverWarning[] = [...solution.warnings];
  const placeNames = new Set(rows.map(({ place }) => place));
  if (placeNames.size > 1) {
    const different = new Set(rows.map(({ temperatureC }) => temperatureC)).size > 1;
    const referred = different ? ', referred to their mean temperature by theory' : '';
    warnings.push({
      code: 'several-places',
      message: `The speed is one fit to all ${placeNames.size} places together${referred}. Each place’s own is under "places".`,
    });
  }
  if (table.passedOver.length > 0) {
    warnings.push({
      code: 'columns-not-read',
      message: `Not read: ${table.passedOver.slice(0, 8).join(', ')}. Optional columns are ${listed(OPTIONAL_COLUMNS)}.`,
    });
  }
  const unstated = rows.filter(({ lengthUncertaintyM }) => lengthUncertaintyM === null).length;
  if (unstated > 0) {
    warnings.push({
      code: 'length-uncertainty-assumed',
      message: `No length_uncertainty_mm in ${unstated} of ${rows.length} rows: ${1000 * USUAL_LENGTH_STANDARD_UNCERTAINTY_M} mm is taken, for a rule read to a millimetre and a resonance found by its loudest place. Where a resonance was found less sharply, state it, for few marks can’t show it.`,
    });
  }
  const assumed = rows.filter(({ forkUncertaintyHz }) => forkUncertaintyHz === null).length;
  if (assumed > 0) {
    warnings.push({
      code: 'fork-tolerance-assumed',
      message: `No fork_uncertainty_hz in ${assumed} of ${rows.length} rows: the stamp is taken to be within ±${100 * STAMP_TOLERANCE} %. Measure the fork to do better.`,
    });
  }
  return {
    speedMps: solution.speedMps,
    standardUncertaintyMps: solution.standardUncertaintyMps,
    expandedUncertaintyMps: solution.expandedUncertaintyMps,
    coverageFactor: solution.coverageFactor,
    endCorrectionM: solution.endCorrectionM,
    endCorrectionStandardUncertaintyM: solution.endCorrectionStandardUncertaintyM,
    endCorrectionSource: solution.endCorrectionSource,
    theory: solution.theory,
    agreement: solution.agreement,
    marks: solution.marks.map(({ key, order, orderConfidence, residualM, outlier, cause }) => ({
      row: rowOf.get(key) ?? 0,
      order,
      orderConfidence,
      residualM,
      outlier,
      cause,
    })),
    warnings,
    budget: solution.budget,
    working: solution.working,
    ...(placeNames.size > 1 ? { places: summarisePlaces(marks) } : {}),
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
            warnings: solution.warnings,
          }
        : {
            place: solution.place,
            speedMps: solution.speedMps,
            standardUncertaintyMps: solution.standardUncertaintyMps,
            expandedUncertaintyMps: solution.expandedUncertaintyMps,
            theory: solution.theory,
            warnings: solution.warnings,
          },
  );
}
