/** Lowest and highest value of a quantity, both included. */
export interface Limit {
  readonly lowest: number;
  readonly highest: number;
}

/**
 * What an experiment may hold, in SI units (°C, % where people never say otherwise). Fields, tables, files, links, the
 * store, prediction and practice all take exactly this, so that what comes in anywhere can be shown, kept, solved and
 * written out everywhere. A range may grow; narrowing one would shut records out that are kept already.
 */
export const LIMITS = {
  /** A fork's stamp. From C₂ on the tone stage tells the fork from its mirror image and from hum; C₈ is the highest made. */
  stampedHz: { lowest: 64, highest: 4096 },
  /** The pitch in use, measured or stamped: within 5 % of the stamp, ten times what makers promise. */
  pitchHz: { lowest: 60.8, highest: 4300.8 },
  /** 0: a textbook's fork. Above 50 Hz a stamp says nothing; it stays below the lowest pitch, as the solver needs. */
  forkStandardUncertaintyHz: { lowest: 0, highest: 50 },
  /** A cold store to a heated tube; air/ has its losses from −30 °C on. Room temperatures in °F (60..90) lie outside. */
  temperatureC: { lowest: -30, highest: 60 },
  /** 0 is kept by records of before; 50 °C: nobody knows. */
  temperatureStandardUncertaintyC: { lowest: 0, highest: 50 },
  humidityPct: { lowest: 0, highest: 100 },
  /** 5500 m above the sea to well below it. Readings in the wrong unit differ by ten or more. */
  pressurePa: { lowest: 50_000, highest: 110_000 },
  /** Mole fraction. A full classroom has 0.003, a breath 0.04. */
  co2MoleFraction: { lowest: 0, highest: 0.06 },
  /** A straw to a sewer pipe. Beyond ka = 1.5 the end correction stays at what it is there. */
  diameterM: { lowest: 0.002, highest: 0.5 },
  /** A reading on the rule, and the column that is left of it. 0.1 mm was always kept; 10 m is more than any tube. */
  lengthM: { lowest: 1e-4, highest: 10 },
  /** Longest column of a tube: as long as a length may be; 1 cm was always kept. */
  travelM: { lowest: 0.01, highest: 10 },
  /** A micrometer's hundredth of a millimetre to no idea at all; tables have always stated as much. */
  readingStandardUncertaintyM: { lowest: 1e-5, highest: 0.2 },
  /** A rule that begins a metre off. */
  zeroOffsetM: { lowest: -1, highest: 1 },
  /** Of a new experiment that nobody named: more than any notebook holds. */
  originNumber: { lowest: 1, highest: 100_000 },
  /** 0: no copy. */
  copyNumber: { lowest: 0, highest: 100_000 },
  /** 100 half wavelengths of the highest fork are 4 m. */
  order: { lowest: 1, highest: 100 },
  /** Any gas at school: sulfur hexafluoride has 134 m/s, helium 1007, hydrogen 1300. */
  speedMps: { lowest: 100, highest: 1500 },
  /** Of a stated result. 0 can't be weighed. */
  speedStandardUncertaintyMps: { lowest: 1e-4, highest: 1500 },

  // What the listening keeps with a mark; nobody types it.
  /** On the source's own axis: four months. */
  timeS: { lowest: 0, highest: 1e7 },
  riseDb: { lowest: -300, highest: 300 },
  confidence: { lowest: 0, highest: 1 },
  /** A pass whose centre is less certain than a hundred widths says nothing of it. */
  centreStandardUncertaintyHalfWidths: { lowest: 1e-6, highest: 100 },
  /** The column's part over the direct sound, either part of the complex number: 120 dB. */
  centreShare: { lowest: -1e6, highest: 1e6 },
  traceStepS: { lowest: 1e-3, highest: 10 },
  /** Digital silence has about −300 dB; far beyond it all the same. */
  traceDb: { lowest: -1000, highest: 1000 },
  gainDepartureDb: { lowest: 0, highest: 300 },
} as const satisfies Record<string, Limit>;

/** Whether a value lies within a limit, both ends included; never for what is no number. */
export function isWithin({ lowest, highest }: Limit, value: number): boolean {
  return value >= lowest && value <= highest;
}
