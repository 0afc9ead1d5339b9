import { speedOfSound } from '../air/speedOfSound.ts';
import type { Preparation } from './prepareMarks.ts';
import type { FullSolution } from './solve.ts';
import { solveInFull } from './solve.ts';
import { effectiveDegreesOfFreedom } from './effectiveDegreesOfFreedom.ts';
import type { NoSolution, SolverMark, SolverOptions, SolverWarning } from './solution.ts';
import { coverageFactor } from '../numeric/studentT.ts';

/** One of two sets of marks: a place, a temperature, a fork, a column type… */
export interface ComparedGroup {
  /** Name by which the comparison refers to it. */
  readonly key: string;
  readonly marks: readonly SolverMark[];
}

/** The same, solved. */
export interface SolvedGroup {
  readonly key: string;
  readonly solved: FullSolution | NoSolution;
}

export interface Comparison {
  /** Keys of both groups. */
  readonly one: string;
  readonly other: string;
  /** Speed of one minus speed of the other. */
  readonly differenceMps: number;
  readonly standardUncertaintyMps: number;
  readonly expandedUncertaintyMps: number;
  readonly coverageFactor: number;
  /** What the uncertainty would be if nothing were shared. */
  readonly uncertaintyWithoutSharingMps: number;
  /** What theory expects from both temperatures and humidities; null where one wasn't given. */
  readonly expected: ExpectedDifference | null;
  /** Whether the 95 % interval of the difference leaves out zero. */
  readonly isReal: boolean;
}

export interface ExpectedDifference {
  readonly differenceMps: number;
  readonly standardUncertaintyMps: number;
  /** Whether the measured difference agrees with it, both uncertainties allowed. */
  readonly agrees: boolean;
}

/** No comparison can be made; the warnings say which group has no result and why. */
export interface NoComparison {
  readonly differenceMps: null;
  readonly warnings: readonly { readonly key: string; readonly warning: SolverWarning }[];
}

/**
 * Difference of the speeds of two groups. Errors in common (a fork that both used, the rule, the walls' and the mouth's
 * theory in tubes of one width) enter with their signs and cancel as far as both results feel them alike.
 * @returns the difference, or why there is none
 * @see JCGM 100:2008, 5.2 (correlated inputs) and F.1.2.3 (a common standard)
 * @example
 * const { rows } = readMarksTable('fork_hz,ends,length_cm,place\n512,closed,16.0,hall\n512,closed,15.2,yard');
 * const [hall, yard] = marksOfRows(rows).map((mark) => ({ key: mark.place, marks: [mark] }));
 * compare(hall, yard).isReal // → true
 */
export function compare(
  one: ComparedGroup,
  other: ComparedGroup,
  options: SolverOptions = {},
): Comparison | NoComparison {
  return compareSolved(
    { key: one.key, solved: solveInFull(one.marks, options) },
    { key: other.key, solved: solveInFull(other.marks, options) },
  );
}

/**
 * As `compare`, of groups that are solved already: whoever compares many solves each once.
 * @example
 * const { rows } = readMarksTable('fork_hz,ends,length_cm,place\n512,closed,16.0,hall\n512,closed,15.2,yard');
 * const [hall, yard] = marksOfRows(rows).map((mark) => ({ key: mark.place, solved: solveInFull([mark]) }));
 * compareSolved(hall, yard).differenceMps.toFixed(0) // → '16'
 */
export function compareSolved(one: SolvedGroup, other: SolvedGroup): Comparison | NoComparison {
  const { solved: first } = one;
  const { solved: second } = other;
  if (!('fit' in first) || !('fit' in second)) {
    const warnings = [
      ...('fit' in first ? [] : first.warnings.map((warning) => ({ key: one.key, warning }))),
      ...('fit' in second ? [] : second.warnings.map((warning) => ({ key: other.key, warning }))),
    ];
    return { differenceMps: null, warnings };
  }

  const firstParts = partsOf(first, 'one');
  const secondParts = partsOf(second, 'other');
  const names = new Set([...firstParts.keys(), ...secondParts.keys()]);
  const contributions = [...names].map((name) => {
    const a = firstParts.get(name);
    const b = secondParts.get(name);
    return {
      contributionMps: Math.abs((a?.signedMps ?? 0) - (b?.signedMps ?? 0)),
      degreesOfFreedom: Math.min(a?.degreesOfFreedom ?? Infinity, b?.degreesOfFreedom ?? Infinity),
    };
  });
  const standardUncertaintyMps = Math.sqrt(
    contributions.reduce((sum, { contributionMps: u }) => sum + u * u, 0),
  );
  const factor = coverageFactor(effectiveDegreesOfFreedom(contributions));
  const differenceMps = first.solution.speedMps - second.solution.speedMps;
  const expanded = factor * standardUncertaintyMps;
  return {
    one: one.key,
    other: other.key,
    differenceMps,
    standardUncertaintyMps,
    expandedUncertaintyMps: expanded,
    coverageFactor: factor,
    uncertaintyWithoutSharingMps: Math.hypot(
      first.solution.standardUncertaintyMps,
      second.solution.standardUncertaintyMps,
    ),
    expected: expectedDifference(first, second, { differenceMps, expandedMps: expanded, factor }),
    isReal: Math.abs(differenceMps) > expanded,
  };
}

interface Part {
  readonly signedMps: number;
  readonly degreesOfFreedom: number;
}

/** Fork, place and ends. */
function setupName({ rows }: Preparation, setup: number | null): string {
  const { forkKey, place, ends } = rows.filter((row) => row.setup === setup)[0].mark;
  return JSON.stringify([forkKey, place, ends]);
}

/** Contributions under names that are equal exactly where the error is the same one. */
function partsOf({ fit, preparation }: FullSolution, side: 'one' | 'other'): Map<string, Part> {
  const radii = new Set(preparation.rows.map(({ mark }) => mark.radiusM));
  const tube = [...radii].sort().join(' ');
  const parts = new Map<string, Part>();
  for (const { source, group, signedMps, degreesOfFreedom } of fit.contributions) {
    const name =
      source === 'reading'
        ? `reading of ${side}`
        : source === 'fork'
          ? `fork ${preparation.rows.filter((row) => row.fork === group)[0].mark.forkKey}`
          : source === 'loudest'
            ? `loudest ${setupName(preparation, group)}`
            : source === 'wall' || source === 'end'
              ? `${source} ${tube}`
              : source;
    parts.set(name, { signedMps, degreesOfFreedom });
  }
  return parts;
}

function expectedDifference(
  first: FullSolution,
  second: FullSolution,
  found: { readonly differenceMps: number; readonly expandedMps: number; readonly factor: number },
): ExpectedDifference | null {
  const [a, b] = [first.preparation.air, second.preparation.air];
  if (a === null || b === null) return null;
  const [one, other] = [speedOfSound(a), speedOfSound(b)];
  const differenceMps = one.speedMps - other.speedMps;
  // The formula's own error and the CO₂ are common to both.
  const standardUncertaintyMps = Math.hypot(
    one.perKelvin * a.temperatureStandardUncertaintyC,
    other.perKelvin * b.temperatureStandardUncertaintyC,
    one.perHumidityPct * a.humidityStandardUncertaintyPct,
    other.perHumidityPct * b.humidityStandardUncertaintyPct,
  );
  return {
    differenceMps,
    standardUncertaintyMps,
    agrees:
      Math.abs(found.differenceMps - differenceMps) <=
      Math.hypot(found.expandedMps, found.factor * standardUncertaintyMps),
  };
}
