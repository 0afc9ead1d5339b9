/** How near the physics must come to its published figures, and why. */
export const AIR_TOLERANCES = {
  /** m/s; a wrong sign on p² moves the speed by 0.0044, the table prints five decimals. */
  cramerMps: 2e-5,
  /** m/s; IEC prints five decimals. */
  iecMps: 5e-6,
  /** m/s; the classic forms differ from Cramer's air in CO₂ and real-gas terms. */
  ideal: 0.25,
  /** m/s; 100 ppm, a third of what Cramer states; all of the moisture makes 0.5 to 2 m/s. */
  mixture: 0.04,
  /** Relative; slopes are quoted to two or three digits. */
  slope: 0.01,
  /** Relative; Dalmont's fit against Levine and Schwinger's integral. */
  endRatio: 0.0035,
  /** Of |R|; the same fit, which is 0.0045 low at ka = 1 and within 0.0004 below 0.5. */
  reflection: 0.005,
  /** m/s; Zwikker–Kosten figures are printed to 0.001 for slightly different constants of air. */
  slowingMps: 0.002,
  /** Relative; Keefe's expansion against the exact form at r_v > 50. */
  keefe: 0.002,
  /** m; printed to 0.1 mm. */
  widthM: 0.00015,
} as const;
