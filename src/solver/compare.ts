import { speedOfSound } from '../air/speedOfSound.ts';
import type { FullSolution } from './solve.ts';
import { solveInFull } from './solve.ts';
import type { NoSolution, SolverMark, SolverOptions, SolverWarning } from './solution.ts';
import { coverageFactor } from './studentT.ts';
import { inWords, significant } from './wording.ts';
import { effectiveDegreesOfFreedom } from './writeBudget.ts';

/** One of two sets of marks: a place, a temperature, a fork, a column type… */
export interface ComparedGroup {
  readonly name: string;
  readonly marks: readonly SolverMark[];
}

/** The same, solved. */
export interface SolvedGroup {
  readonly name: string;
  readonly solved: FullSolution | NoSolution;
}

export interface Comparison {
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
  readonly expected: { readonly differenceMps: number; readonly standardUncertaintyMps: number } | null;
  /** Whether the 95 % interval of the difference leaves out zero. */
  readonly isReal: boolean;
  /** The same in a sentence. */
  readonly statement: string;
}

/** No comparison can be made; the warnings say which group has no result and why. */
export interface NoComparison {
  readonly differenceMps: null;
  readonly warnings: readonly SolverWarning[];
}

/**
 * Difference of the speeds of two groups. Errors in common (a fork that both used, the rule, the walls' and the mouth's
 * theory in tubes of one width) enter with their signs and cancel as far as both results feel them alike.
 * @returns the difference, or why there is none
 * @see JCGM 100:2008, 5.2 (correlated inputs) and F.1.2.3 (a common standard)
 */
export function compare(
  one: ComparedGroup,
  other: ComparedGroup,
  options: SolverOptions = {},
): Comparison | NoComparison {
  return compareSolved(
    { name: one.name, solved: solveInFull(one.marks, options) },
    { name: other.name, solved: solveInFull(other.marks, options) },
  );
}

/** As `compare`, of groups that are solved already: whoever compares many solves each once. */
export function compareSolved(one: SolvedGroup, other: SolvedGroup): Comparison | NoComparison {
  const { solved: first } = one;
  const { solved: second } = other;
  if (!('fit' in first) || !('fit' in second)) {
    const warnings = [
      ...('fit' in first ? [] : first.warnings.map((warning) => prefixed(one.name, warning))),
      ...('fit' in second ? [] : second.warnings.map((warning) => prefixed(other.name, warning))),
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
  const expected = expectedDifference(first, second);
  return {
    one: one.name,
    other: other.name,
    differenceMps,
    standardUncertaintyMps,
    expandedUncertaintyMps: expanded,
    coverageFactor: factor,
    uncertaintyWithoutSharingMps: Math.hypot(
      first.solution.standardUncertaintyMps,
      second.solution.standardUncertaintyMps,
    ),
    expected,
    isReal: Math.abs(differenceMps) > expanded,
    statement: stateDifference(one.name, other.name, differenceMps, expanded, expected, factor),
  };
}

interface Part {
  readonly signedMps: number;
  readonly degreesOfFreedom: number;
}

/** Contributions under names that are equal exactly where the error is the same one. */
function partsOf({ fit, preparation }: FullSolution, side: 'one' | 'other'): Map<string, Part> {
  const radii = new Set(preparation.rows.map(({ mark }) => mark.radiusM));
  const tube = [...radii].sort().join(' ');
  const parts = new Map<string, Part>();
  for (const { source, fork, signedMps, degreesOfFreedom } of fit.contributions) {
    const name =
      source === 'reading'
        ? `reading of ${side}`
        : source === 'fork'
          ? `fork ${preparation.rows.find((row) => row.fork === fork)?.mark.forkKey ?? ''}`
          : source === 'wall' || source === 'end'
            ? `${source} ${tube}`
            : source;
    parts.set(name, { signedMps, degreesOfFreedom });
  }
  return parts;
}

function expectedDifference(first: FullSolution, second: FullSolution): Comparison['expected'] {
  const [a, b] = [first.preparation.air, second.preparation.air];
  if (a === null || b === null) return null;
  const [one, other] = [speedOfSound(a), speedOfSound(b)];
  // The formula's own error and the CO₂ are common to both.
  return {
    differenceMps: one.speedMps - other.speedMps,
    standardUncertaintyMps: Math.hypot(
      one.perKelvin * a.temperatureStandardUncertaintyC,
      other.perKelvin * b.temperatureStandardUncertaintyC,
      one.perHumidityPct * a.humidityStandardUncertaintyPct,
      other.perHumidityPct * b.humidityStandardUncertaintyPct,
    ),
  };
}

function stateDifference(
  one: string,
  other: string,
  differenceMps: number,
  expandedMps: number,
  expected: Comparison['expected'],
  factor: number,
): string {
  const size = significant(Math.abs(differenceMps), 2);
  const doubt = significant(expandedMps, 2);
  const found =
    Math.abs(differenceMps) > expandedMps
      ? `Sound is ${size} m/s ${differenceMps > 0 ? 'faster' : 'slower'} in ${one} than in ${other}, ± ${doubt} m/s (95 %): a real difference.`
      : `${one} and ${other} differ by ${size} m/s, ± ${doubt} m/s (95 %): no difference that these marks can show.`;
  if (expected === null) return found;
  const fits =
    Math.abs(differenceMps - expected.differenceMps) <=
    Math.hypot(expandedMps, factor * expected.standardUncertaintyMps);
  return `${found} Theory expects ${inWords(expected.differenceMps, 1)} m/s for their air, which ${fits ? 'agrees' : 'does not agree'}.`;
}

function prefixed(name: string, { code, message }: SolverWarning): SolverWarning {
  return { code, message: `${name}: ${message}` };
}
