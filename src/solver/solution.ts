import type { AirState } from '../air/airState.ts';
import type { MouthShape } from '../air/mouth.ts';
import type { ColumnEnds, LocatedBy } from '../marks/mark.ts';
import type { Repeatability } from './repeatability.ts';
import type { OutlierCause } from './outlierCause.ts';
import type { SolverWarning } from './solverWarning.ts';
import type { WorkingStep } from './workingStep.ts';

export type { AirState } from '../air/airState.ts';
export type { SolverWarning } from './solverWarning.ts';
export type { WorkingStep } from './workingStep.ts';

/** One measured length as the solver takes it: SI, zero offset taken off. */
export interface SolverMark {
  /** Name by which the result refers to it: a mark's id or a row number. */
  readonly key: string;
  /** Marks of one fork share its frequency error. */
  readonly forkKey: string;
  readonly frequencyHz: number;
  readonly frequencyStandardUncertaintyHz: number;
  readonly ends: ColumnEnds;
  readonly lengthM: number;
  /** The other side of a bracket; null where one length was read. */
  readonly otherLengthM: number | null;
  /** Reading, and the hand's search for the place. Where that place lies about the resonance is not in it. */
  readonly lengthStandardUncertaintyM: number;
  /** Whether nobody stated that uncertainty: the lengths' scatter may narrow it, too. */
  readonly isReadingAssumed?: boolean;
  /** Inside radius of the tube; null where it wasn't given. */
  readonly radiusM: number | null;
  /** Radius at the other open end of a telescoping tube; null: the same. */
  readonly otherRadiusM: number | null;
  /** Shape of the open ends; null or absent: not described. */
  readonly mouth?: MouthShape | null;
  readonly air: AirState | null;
  readonly place: string;
  /** Order that the user fixed. */
  readonly order: number | null;
  /** How many marks of the table are the same as this in everything, itself among them: they count as one. Absent: 1. */
  readonly copies?: number;
  /** How the length was found; absent: at the loudest place. */
  readonly locatedBy?: LocatedBy;
  /** How much louder than the fork alone the loudest place was, dB; null or absent where nobody knows. */
  readonly riseDb?: number | null;
  /** Of the centre that the bench showed, half widths; null or absent: what is usual. */
  readonly centreStandardUncertaintyHalfWidths?: number | null;
}

/** Errors that all marks have in common. */
export interface RuleErrors {
  /** Standard uncertainty of the rule's zero, m. */
  readonly zeroStandardUncertaintyM: number;
  /** Relative standard uncertainty of the rule's scale. */
  readonly scaleStandardUncertainty: number;
}

/** What the user may tell the solver beside the marks. */
export interface SolverOptions {
  /** Errors of the rule; absent: half a millimetre of zero and 0.02 % of scale. */
  readonly rule?: RuleErrors;
  /** Speeds that are thought possible when orders are chosen, m/s; absent: air between −10 and 45 °C. */
  readonly speedRangeMps?: readonly [lowest: number, highest: number];
}

/** An order that fits less well, and what it would mean. */
export interface RunnerUp {
  readonly order: number;
  readonly speedMps: number;
  readonly endCorrectionM: number;
  /** Share of belief, 0..1. */
  readonly share: number;
}

export interface SolvedMark {
  readonly key: string;
  readonly order: number;
  /** 0..1. */
  readonly orderConfidence: number;
  /** The next best order; null where none was near. */
  readonly runnerUp: RunnerUp | null;
  /** Measured minus fitted length, m. */
  readonly residualM: number;
  readonly outlier: boolean;
  /** Likely cause where it is an outlier, else null. */
  readonly cause: OutlierCause | null;
}

/** Where a part of the speed's uncertainty comes from. */
export type BudgetSource =
  /** Reading the rule, and finding the resonance as far as that differs from mark to mark; widened where the lengths scatter more than was stated. */
  | { readonly source: 'reading'; readonly isWidened: boolean }
  | { readonly source: 'fork'; readonly frequencyHz: number }
  /** The loudest place beside the resonance, to one side for all marks of one fork and setup. */
  | { readonly source: 'loudest' }
  | { readonly source: 'zero' | 'scale' }
  /** The end correction where the marks don't give it: theory's over the radius, or unknown without a diameter. */
  | { readonly source: 'end'; readonly isFromTheory: boolean }
  | { readonly source: 'wall'; readonly isRemoved: boolean };

/** One line of the uncertainty budget. */
export type BudgetLine = BudgetSource & {
  readonly standardUncertainty: number;
  /** Of the standard uncertainty. */
  readonly unit: 'm' | 'Hz' | 'm/s' | '1';
  /** Partial derivative of the speed, in m/s per `unit`; null for a line that is already in m/s. */
  readonly sensitivity: number | null;
  readonly contributionMps: number;
  readonly degreesOfFreedom: number;
  /** Type A: from the lengths' own scatter; B: from anything else (JCGM 100:2008, 4.2 and 4.3). */
  readonly evaluation: 'A' | 'B';
  readonly distribution: Distribution;
};

/** `arcsine`: of the sine of an angle of which nothing is known. */
export type Distribution = 'normal' | 'rectangular' | 'arcsine';

/** The speed of sound at one place. */
export interface Solution {
  readonly place: string;
  /** Free air. */
  readonly speedMps: number;
  readonly standardUncertaintyMps: number;
  readonly expandedUncertaintyMps: number;
  readonly coverageFactor: number;
  readonly effectiveDegreesOfFreedom: number;
  readonly endCorrectionM: number;
  readonly endCorrectionStandardUncertaintyM: number;
  /** `measured` where the marks say more of it than was known beforehand. */
  readonly endCorrectionSource: 'measured' | 'theory' | 'assumed';
  /** From the marks alone, what is known of mouths left aside; null where they don't determine it. */
  readonly endCorrectionOfMarks: {
    readonly endCorrectionM: number;
    readonly standardUncertaintyM: number;
  } | null;
  /** Correlation coefficient r(v, e), -1..1. */
  readonly speedEndCorrelation: number;
  readonly theory: { readonly speedMps: number; readonly standardUncertaintyMps: number } | null;
  /** Measured minus theory; null where the air's temperature wasn't given. */
  readonly agreement: {
    readonly differenceMps: number;
    readonly differencePct: number;
    /** E_n: difference over the root of both expanded uncertainties' squares; within ±1 they agree. */
    readonly normalisedError: number;
  } | null;
  /** Air to which the speed belongs: the marks' mean; null where no temperature was given. */
  readonly air: AirState | null;
  /** Factor by which the marks' scatter widened their stated uncertainty, or corrected an assumed one; 1: not at all. */
  readonly scatterFactor: number;
  /** How well readings of the same resonances agree; null where nothing was read twice. */
  readonly repeatability: Repeatability | null;
  readonly marks: readonly SolvedMark[];
  readonly budget: readonly BudgetLine[];
  readonly working: readonly WorkingStep[];
  readonly warnings: readonly SolverWarning[];
}

/** No speed can be given; the warnings say why and what to do. */
export interface NoSolution {
  readonly place: string;
  readonly speedMps: null;
  readonly warnings: readonly SolverWarning[];
}
