import type { ColumnEnds } from '../marks/mark.ts';
import type { Filling, GasId } from '../air/gases.ts';
import type { OutlierCause } from './outlierCause.ts';

/** A number of a mark that can't be, with the range that it must lie in; the unit is in the quantity's name. */
export interface QuantityFault {
  readonly lowest: number;
  readonly highest: number;
  readonly value: number;
}

/** Why a mark can't be used. */
export type MarkFault =
  | (QuantityFault & {
      readonly code: 'out-of-range';
      readonly quantity:
        | 'frequencyHz'
        | 'frequencyStandardUncertaintyHz'
        | 'lengthM'
        | 'otherLengthM'
        | 'lengthStandardUncertaintyM'
        | 'radiusM'
        | 'otherRadiusM'
        | 'temperatureC';
    })
  | { readonly code: 'order-not-whole'; readonly order: number }
  /** In another gas than the first mark. */
  | { readonly code: 'another-gas'; readonly filling: Filling; readonly others: Filling }
  /** The air has no speed of sound; the fault names the quantity that is to blame, null where none is alone. */
  | { readonly code: 'air'; readonly fault: (QuantityFault & { readonly quantity: string }) | null };

/** A mark whose order isn't certain. */
export interface DoubtfulOrder {
  readonly key: string;
  readonly order: number;
  /** 0..1. */
  readonly orderConfidence: number;
  /** The next best order; null where none was near. */
  readonly runnerUpOrder: number | null;
}

/** Resonances of one fork and kind of column that no mark shows though a higher one is there. */
export interface OrderGap {
  readonly frequencyHz: number;
  readonly ends: ColumnEnds;
  /** Ascending, at least one. */
  readonly orders: readonly number[];
}

/** Unit in which lengths may have been typed without saying so. */
export type MistakenUnit = 'millimetres' | 'inches' | 'centimetres';

/** What a table's numbers may mean instead of what is noted; `share`: of belief, 0..1. */
export type OtherExplanation =
  | { readonly kind: 'unit'; readonly unit: MistakenUnit; readonly share: number }
  | { readonly kind: 'fork'; readonly notedHz: number; readonly fittingHz: number; readonly share: number }
  | { readonly kind: 'gas'; readonly gas: GasId; readonly share: number };

/** What the user should know before trusting a result, or why there is none. Marks go by their keys. */
export type SolverWarning =
  // Why there is no result.
  | { readonly code: 'no-marks' }
  | { readonly code: 'no-orders' }
  /** Longer columns would have shorter waves. */
  | { readonly code: 'contradiction' }
  // Single marks.
  | { readonly code: 'bad-mark'; readonly key: string; readonly fault: MarkFault }
  | { readonly code: 'outlier'; readonly key: string; readonly cause: OutlierCause }
  /** One of these must be wrong, and the marks can't tell which. */
  | { readonly code: 'inconsistent'; readonly keys: readonly string[] }
  | { readonly code: 'bracket-wide'; readonly key: string }
  // Orders.
  /** `hasDiameter`: whether the tube's diameter is known. */
  | { readonly code: 'nothing-fits'; readonly hasDiameter: boolean }
  | { readonly code: 'column-type'; readonly notedEnds: ColumnEnds; readonly fittingEnds: ColumnEnds }
  | { readonly code: 'length-unit'; readonly unit: MistakenUnit }
  | { readonly code: 'order-ambiguous'; readonly marks: readonly DoubtfulOrder[] }
  /** Orders that the user set and that don't fit. */
  | { readonly code: 'order-doubtful'; readonly keys: readonly string[] }
  | { readonly code: 'skipped-orders'; readonly gaps: readonly OrderGap[] }
  /** The numbers would make sense otherwise, too; `shareAsNoted`: of belief, 0..1. */
  | {
      readonly code: 'other-explanation';
      readonly shareAsNoted: number;
      /** Likeliest first, at least one. */
      readonly explanations: readonly OtherExplanation[];
    }
  /** Rows that are the same in everything: counted once. */
  | { readonly code: 'exact-repeats'; readonly copies: number }
  /** Forks whose frequencies differ by less than a stamp can be off: taken for one. */
  | { readonly code: 'forks-alike'; readonly frequenciesHz: readonly number[] }
  /** Theory of plane waves ends before ka = 1.84, the first cross mode of a round tube. */
  | {
      readonly code: 'tube-too-wide';
      readonly diameterM: number;
      readonly frequencyHz: number;
      readonly ka: number;
    }
  /** Nothing else in the table could show that one of these was misread. */
  | { readonly code: 'unchecked'; readonly keys: readonly string[]; readonly isAll: boolean }
  // The result.
  /** Lengths scatter by this factor more than their stated uncertainty, > 1. */
  | { readonly code: 'scatter'; readonly factor: number }
  | {
      readonly code: 'end-correction-implausible';
      readonly endCorrectionM: number;
      /** End correction over radius; null where no diameter is known. */
      readonly endCorrectionRatio: number | null;
    }
  /** Without a thermometer: the air would be colder or warmer than rooms are. */
  | {
      readonly code: 'unusual-temperature';
      /** null: no air that the bench takes has this speed. */
      readonly temperatureC: number | null;
      readonly isCold: boolean;
    }
  | {
      readonly code: 'speed-implausible';
      readonly speedMps: number;
      readonly lowestMps: number;
      readonly highestMps: number;
    }
  | {
      readonly code: 'differs-from-theory';
      /** Measured minus theory. */
      readonly differenceMps: number;
      /** Frequency of a school's fork with which the result would agree, where it is a single fork's; else null. */
      readonly agreeingForkHz: number | null;
    }
  /** Speed and end correction are unusual together. */
  | { readonly code: 'implausible' }
  // What isn't known.
  | { readonly code: 'too-few-marks' }
  | { readonly code: 'end-correction-from-theory' }
  | { readonly code: 'end-correction-unknown' }
  | { readonly code: 'no-diameter' }
  | { readonly code: 'some-diameters-missing' }
  | { readonly code: 'some-temperatures-missing' }
  /** `temperatureC`: of air that has the result's speed, half moist; null where there is none. */
  | {
      readonly code: 'no-temperature';
      readonly temperatureC: number | null;
      readonly expandedUncertaintyC: number;
    }
  | { readonly code: 'air-beyond-formula' };

export type SolverWarningCode = SolverWarning['code'];
