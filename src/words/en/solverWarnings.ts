import { plural } from './grammar.ts';

/** What to know before a result is trusted, or why there is none. A mark comes by its name, like “Mark 3”. */
export const solverWarning = {
  noMarks: 'No mark has a usable length yet. Mark a resonance and read its length.',
  noOrders: 'No choice of orders fits these marks.',
  contradiction:
    'With these orders a longer column would have a shorter wave. Check the lengths and the orders that were set.',
  outlier: (mark: string, cause: string) => `${mark} doesn’t fit and is left out of the fit. ${cause}`,
  inconsistent: (marks: string) =>
    `The marks contradict each other, and can’t tell which of ${marks} is wrong. Repeat these.`,
  bracketWide: (mark: string) => `The two lengths of ${mark} are too far apart to locate the resonance well.`,
  nothingFits:
    'Most of these lengths fit no resonance of one speed and end correction. Check the unit of the lengths, the fork and the ends before you use the result.',
  nothingFitsDiameter:
    'Most of these lengths fit no resonance of one speed and end correction. Check the unit of the lengths and of the diameter, the fork and the ends before you use the result.',
  columnType: {
    closed:
      'These lengths don’t fit a column open at both ends, but would fit one closed at one end. Check which ends were open.',
    open: 'These lengths don’t fit a column closed at one end, but would fit one open at both ends. Check which ends were open.',
  },
  lengthUnit: (unit: string) =>
    `These lengths don’t fit as they are, but they would fit if they were in ${unit}. Check the unit.`,
  orderAmbiguous: (marks: string) =>
    `More than one choice of orders fits: ${marks}. Mark a neighbouring resonance, or set the order.`,
  /** One of these marks. @param rival  the next likely order, null where there is none */
  orderOf: (mark: string, order: number, percent: string, rival: number | null) =>
    `${mark}: order ${order} (${percent} %)${rival === null ? '' : `, else ${rival}`}`,
  orderDoubtful: (marks: string) =>
    `The order that was set for ${marks} doesn’t fit air in this tube. Leave the order on auto, or check the fork.`,
  skippedOrders: (gaps: string) => `No mark at ${gaps}. Was a resonance missed?`,
  gap: {
    closed: (orders: string, hertz: string) => `order ${orders} (${hertz} Hz, closed)`,
    open: (orders: string, hertz: string) => `order ${orders} (${hertz} Hz, open)`,
  },
  otherExplanation: (others: string, percentAsNoted: string) =>
    `These numbers could also mean something else: ${others}; as noted ${percentAsNoted} %. Check fork, unit and gas, or mark the first resonance.`,
  /** One of these, with its odds. */
  odds: (explanation: string, percent: string) => `${explanation} (${percent} %)`,
  otherUnit: (unit: string) => `lengths in ${unit}`,
  otherFork: (hertz: string) => `a fork of ${hertz} Hz`,
  otherGas: (gas: string) => `${gas} in the tube`,
  exactRepeats: (copies: number) =>
    `${plural(copies, 'One mark is', `${copies} marks are`)} the same as another in everything and counted once. Pasted twice? Leave ${plural(copies, 'it', 'them')} out. Read twice? Say when in the table, under made_at.`,
  forksAlike: (forks: string) =>
    `${forks} are taken for one fork, written in two ways. If these are two forks, measure them and state fork_uncertainty_hz.`,
  hertz: (hertz: string) => `${hertz} Hz`,
  tubeTooWide: (millimetres: string, hertz: string, ka: string) =>
    `A tube ${millimetres} mm wide is too wide for ${hertz} Hz: the sound in it is no plane wave any more (ka = ${ka}), and the predicted end correction doesn’t hold. Take a narrower tube or a lower fork.`,
  allUnchecked:
    'Nothing in these marks could show a misreading: two lengths always fit. A third resonance would show it.',
  unchecked: (marks: string) =>
    `Nothing here could show a misreading of ${marks}. Mark one more resonance, or read it again.`,
  speedOfAir: {
    cold: (celsius: string) =>
      `This is the speed of sound in air of ${celsius} °C. Was the room so cold? If not, check the fork’s frequency, the unit of the lengths and the gas.`,
    warm: (celsius: string) =>
      `This is the speed of sound in air of ${celsius} °C. Was the room so warm? If not, check the fork’s frequency, the unit of the lengths and the gas.`,
  },
  speedOfNoAir: {
    cold: 'No air is as cold as this speed would need. Check the fork’s frequency, the unit of the lengths and the gas.',
    warm: 'No air is as warm as this speed would need. Check the fork’s frequency, the unit of the lengths and the gas.',
  },
  scatter: (factor: string) =>
    `The lengths scatter ${factor} times as much as was stated or assumed; the result’s uncertainty is made larger.`,
  endImplausible: (millimetres: string) =>
    `The end correction comes out as ${millimetres} mm. Check the zero of the rule and the ends.`,
  endImplausibleInRadii: (millimetres: string, radii: string, usualRadii: string) =>
    `The end correction comes out as ${millimetres} mm, ${radii} radii; about ${usualRadii} is usual. Check the zero of the rule, the diameter, and the ends.`,
  speedImplausible: (mps: string, lowest: string, highest: string) =>
    `${mps} m/s is outside of ${lowest} to ${highest} m/s for air. Check the fork’s frequency and the orders.`,
  aboveTheory: (mps: string) =>
    `The result is ${mps} m/s above the predicted speed, more than both uncertainties allow. Check what is at the mouth, the lengths and the rule’s zero, then the thermometer and the fork’s frequency.`,
  belowTheory: (mps: string) =>
    `The result is ${mps} m/s below the predicted speed, more than both uncertainties allow. Check what is at the mouth, the lengths and the rule’s zero, then the thermometer and the fork’s frequency.`,
  agreeingFork: (hertz: string) => `A fork of ${hertz} Hz would agree: was it that one?`,
  implausible: 'Speed and end correction together are unusual for air in a tube.',
  tooFewMarks: 'One mark can’t separate end correction and wavelength. Mark a second resonance.',
  endFromTheory:
    'The marks alone don’t give the end correction well. What is known of the tube’s mouth is used, with its uncertainty.',
  endUnknown: (expected: string, giveOrTake: string) =>
    `The marks don’t give the end correction and no diameter is given. ${expected} mm is assumed, as in usual tubes, give or take ${giveOrTake} mm.`,
  noDiameter: (lowestPercent: string, highestPercent: string) =>
    `No diameter is given, so it isn’t known how much the walls slow the wave (${lowestPercent} to ${highestPercent} %). Nothing is taken off; the uncertainty includes it.`,
  someDiametersMissing: 'Where no diameter is given, the mean of the others is used.',
  someTemperaturesMissing: 'Where no air temperature is given, the mean of the others is used.',
  noTemperature: 'No air temperature is given, so the speed can’t be compared with the predicted one.',
  ifAir: (celsius: string, giveOrTake: string) =>
    `If the gas is air, this speed belongs to ${celsius} °C, give or take ${giveOrTake} °C.`,
  airBeyondFormula:
    'This air is outside of 0 to 30 °C and 750 to 1020 hPa, where the formula for the predicted speed was checked; its uncertainty is made larger.',
};

/** Why a mark isn't used. It comes by its name. */
export const unusableMark = {
  outOfRange: {
    frequencyHz: (mark: string, lowest: string, highest: string, value: string) =>
      `${mark} is not used: its frequency must be ${lowest} to ${highest} Hz, not ${value} Hz.`,
    frequencyStandardUncertaintyHz: (mark: string, lowest: string, highest: string, value: string) =>
      `${mark} is not used: the uncertainty of its frequency must be ${lowest} to ${highest} Hz, not ${value} Hz.`,
    lengthM: (mark: string, lowest: string, highest: string, value: string) =>
      `${mark} is not used: its length must be ${lowest} to ${highest} m, not ${value} m.`,
    otherLengthM: (mark: string, lowest: string, highest: string, value: string) =>
      `${mark} is not used: its other length must be ${lowest} to ${highest} m, not ${value} m.`,
    lengthStandardUncertaintyM: (mark: string, lowest: string, highest: string, value: string) =>
      `${mark} is not used: the uncertainty of its length must be ${lowest} to ${highest} m, not ${value} m.`,
    radiusM: (mark: string, lowest: string, highest: string, value: string) =>
      `${mark} is not used: the tube’s radius must be ${lowest} to ${highest} m, not ${value} m.`,
    otherRadiusM: (mark: string, lowest: string, highest: string, value: string) =>
      `${mark} is not used: the tube’s other radius must be ${lowest} to ${highest} m, not ${value} m.`,
    temperatureC: (mark: string, lowest: string, highest: string, value: string) =>
      `${mark} is not used: its air temperature must be ${lowest} to ${highest} °C, not ${value} °C.`,
    humidityPct: (mark: string, lowest: string, highest: string, value: string) =>
      `${mark} is not used: its humidity must be ${lowest} to ${highest} %, not ${value} %.`,
    pressurePa: (mark: string, lowest: string, highest: string, value: string) =>
      `${mark} is not used: its air pressure must be ${lowest} to ${highest} Pa, not ${value} Pa.`,
  },
  anotherGas: (mark: string, gas: string, firstGas: string) =>
    `${mark} is not used: its gas is ${gas}, that of the first mark is ${firstGas}. Solve each gas by itself.`,
  orderNotWhole: (mark: string, order: string) =>
    `${mark} is not used: its order must be a whole number above 0, not ${order}.`,
  air: (mark: string) => `${mark} is not used: its temperature, humidity and pressure can’t all be right.`,
};
