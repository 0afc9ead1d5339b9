/** Why a typed value, or a cell of a table, wasn't understood, and what to do. */
export const parseFault = {
  /** What each quantity is called in these sentences, as they need it. */
  quantities: {
    value: 'value',
    length: 'length',
    order: 'order',
    temperature: 'temperature',
    humidity: 'humidity',
    pressure: 'pressure',
    'carbon-dioxide': 'carbon dioxide',
    pitch: 'frequency',
    diameter: 'diameter',
    'length-uncertainty': 'uncertainty of the length',
    'fork-uncertainty': 'uncertainty of the fork',
    uncertainty: 'uncertainty',
    'reading-uncertainty': 'reading uncertainty',
    'longest-column': 'longest column',
    'zero-offset': 'zero offset',
    rise: 'rise',
    'centre-uncertainty': 'uncertainty of the centre',
    speed: 'speed',
    speed_mps: 'speed_mps',
    standard_uncertainty_mps: 'standard_uncertainty_mps',
    expanded_uncertainty_mps: 'expanded_uncertainty_mps',
  },
  halfWidths: 'half widths',
  empty: (quantity: string) => `The ${quantity} is empty. Type a number such as 15.8 or 15,8.`,
  noNumber: (typed: string, quantity: string) =>
    `“${typed}” is not a number. Write the ${quantity} in digits.`,
  splitNumber: (typed: string, quantity: string) =>
    `“${typed}” has more than one decimal sign, or a space in it. Write the ${quantity} like 1234.5.`,
  tooLarge: (typed: string, quantity: string) => `“${typed}” is too large for the ${quantity}.`,
  unknownUnit: (typed: string, quantity: string, known: string) =>
    `“${typed}” is not a unit for the ${quantity}. Use ${known}.`,
  outOfRange: (quantity: string, lowest: string, highest: string, value: string, unit: string) =>
    `The ${quantity} must be ${lowest} to ${highest} ${unit}, not ${value} ${unit}.`,
  checkUnit: (known: string) => `Check the number and its unit (${known}).`,
  /** What was likely meant with a number outside of the range, or how to go on. */
  hints: {
    kelvin: (value: string) => `For kelvin write ${value} K.`,
    fahrenheit: (value: string) => `For degrees Fahrenheit write ${value} °F.`,
    'plain-hpa': 'Numbers without a unit are hPa: sea level has about 1013.',
    'plain-mm': 'Numbers without a unit are mm.',
    'fork-pitches':
      'This page works with forks of these frequencies: check the number, or take another fork.',
  },
  doubtfulHumidity: (value: string, percent: string) =>
    `${value} % is drier than any room. If you mean a fraction, write ${percent}; if not, write ${value} %.`,
  unknownLengthUnit: (typed: string) => `“${typed}” is not a unit of length here. Use cm, mm or m.`,
  badLength: {
    zero: (lowest: string, highest: string, unit: string) =>
      `The length is zero: it must be ${lowest} to ${highest} ${unit}. Type the length of the air column.`,
    negative: (value: string, lowest: string, highest: string, unit: string) =>
      `${value} ${unit} is negative: a length must be ${lowest} to ${highest} ${unit}. Check the zero of the rule.`,
    belowPlain: (value: string, unit: string, centimetres: string) =>
      `${value} ${unit} is shorter than any column. Numbers without a unit are cm: if these are metres, write ${value} m or ${centimetres}; if not, write ${value} cm.`,
    tooLong: (value: string, longestM: string, lowest: string, highest: string, unit: string) =>
      `${value} ${unit} is longer than ${longestM} m: a length must be ${lowest} to ${highest} ${unit}.`,
    tooShort: (value: string, lowest: string, highest: string, unit: string) =>
      `${value} ${unit} is shorter than any column: a length must be ${lowest} to ${highest} ${unit}.`,
    millimetres: (value: string) =>
      `Numbers without a unit are cm: if these are millimetres, write ${value} mm.`,
    checkUnit: 'Check the number and its unit (cm, mm or m).',
  },
  wideBracket: (widestCm: string) =>
    `The two lengths are more than ${widestCm} cm apart: two lengths in one cell stand for one resonance. Type them closer together, or as two marks.`,
  noEnds: (typed: string) =>
    `“${typed}” is neither closed nor open. Write closed (one end closed) or open (both ends open).`,
  emptyEnds: 'The cell is empty. Write closed (one end closed) or open (both ends open).',
  badOrder: (lowest: string, highest: string, typed: string) =>
    `The order must be a whole number from ${lowest} to ${highest}, not ${typed}. The first resonance has 1; leave it empty if you don’t know.`,
  neitherYesNorNo: (typed: string) =>
    `“${typed}” is neither yes nor no. Write yes for a mark that is left out of the fit; otherwise leave the cell empty.`,
  noWayOfLocating: (typed: string) =>
    `“${typed}” doesn’t say how the length was found. Write centre where this page showed the centre of the resonance, loudest where it was found by ear or by level.`,
  noGas: (typed: string, known: string) =>
    `“${typed}” is not a gas that this page knows. Write ${known}, or leave the cell empty for air.`,
  noMouth: (typed: string, known: string) =>
    `“${typed}” is not a mouth that this page knows. Write ${known}, or leave the cell empty.`,
};
