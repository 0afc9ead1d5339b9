import type { ColumnEnds } from '../marks/mark.ts';

/** Slips of whole steps that happen when a rule is read, m. */
export type RuleSlipM = 0.01 | 0.05 | 0.1 | 0.2 | 0.5 | 1;

/** One thing that would explain a length that is off. */
export type OutlierExplanation =
  | { readonly code: 'misread'; readonly slipM: RuleSlipM }
  | { readonly code: 'swapped-digits' }
  | { readonly code: 'slipped-point' }
  /** The length is a resonance of the other kind of column. */
  | { readonly code: 'other-column'; readonly ends: ColumnEnds; readonly order: number }
  /** The length is a resonance of another fork in use. */
  | { readonly code: 'other-fork'; readonly frequencyHz: number; readonly order: number };

/** What may have gone wrong with a mark that doesn't fit. */
export type OutlierCause =
  | { readonly code: 'set-order'; readonly setOrder: number; readonly fittingOrder: number }
  | {
      readonly code: 'length-off';
      /** Measured minus fitted. */
      readonly residualM: number;
      /** Likeliest first; empty where nothing explains it. */
      readonly explanations: readonly OutlierExplanation[];
    };
