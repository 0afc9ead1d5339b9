/** How near the fits must come to their published figures, and why. */
export const FIT_TOLERANCES = {
  /** Relative: NIST certifies 15 digits; 10 is what its own guide calls good. */
  nist: 1e-10,
  /** Relative: York prints 7 or 8 digits. */
  york: 2e-7,
  /** GUM H.3 prints rounded figures: half a unit of the last. */
  gumOffset: 0.00005,
  gumSlope: 0.000005,
  gumPrediction: 0.00005,
  /** Absolute: quantiles are printed to four decimals. */
  studentT: 0.00006,
  /** Relative: what Wilson and Hilferty's form of χ² is good for, worst at ν = 1. */
  chiSquared: 0.032,
  /** m/s: textbooks print whole metres per second. */
  textbookMps: 0.5,
  /** Relative: where a textbook's answer has three digits. */
  threeDigits: 0.005,
  /** Relative: what the arithmetic leaves of exact input. */
  exact: 1e-9,
  /** Relative: what 400 readings leave of a constraint that agrees with them to 0.02 radii. */
  outweighed: 1e-7,
} as const;

/** How near the solver must come to what another forward model made. */
export const SOLVER_TOLERANCES = {
  /** Relative: Cramer's formula is good to 300 ppm, walls to 0.3 % of their 0.2 to 1 %; both fall out but for a rest. */
  twoModels: 5e-5,
} as const;
