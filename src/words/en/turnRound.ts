/** What the same marks say of another quantity than the speed. */
export const turnRound = {
  noFork: 'Note the air’s temperature and mark at least one resonance of the fork chosen above.',
  fork: (hertz: string, uncertaintyHz: string) =>
    `The fork chosen above has ${hertz} ± ${uncertaintyHz} Hz (95 %), if sound has the predicted speed for the noted temperature.`,
  noTemperature: (lowestC: string, highestC: string) =>
    `There is no speed yet, or one that air doesn’t have between ${lowestC} and ${highestC} °C.`,
  temperature: (celsius: string, uncertaintyC: string) =>
    `If the gas is air, its temperature is ${celsius} ± ${uncertaintyC} °C (95 %).`,
  noGas: 'Note the temperature and mark at least one resonance.',
  nearestGas: (gas: string) => `No gas on the list has this speed. The nearest: ${gas}.`,
  fittingGases: (gases: string) => `The speed fits: ${gases}. The other gases on the list don’t fit.`,
  /** One of these gases, with its predicted speed. */
  gas: (gas: string, mps: string) => `${gas} (${mps} m/s)`,
  noDiameter: 'Note the tube’s diameter and mark two resonances.',
  endFromTheory: 'So far the end correction comes from theory. Mark resonances of two orders to measure it.',
  /** Parts of the diameter: measured, of a thin rim in theory, and as a rule of thumb. */
  endRatio: (part: string, uncertainty: string, thinRim: string, usual: string) =>
    `The end correction is (${part} ± ${uncertainty}) times the diameter (95 %). Theory has ${thinRim} for a thin rim (Levine & Schwinger 1948); the usual rule of thumb is ${usual}.`,
};
