/** What is said of a result beside its speed. */
export const resultFact = {
  uncertainty: 'Uncertainty',
  coverage: (factor: string) => `± covers the true value in 95 of 100 cases (k = ${factor})`,
  endCorrection: 'End correction',
  endFrom: {
    measured: (mm: string, uncertaintyMm: string) =>
      `${mm} mm, measured; standard uncertainty ${uncertaintyMm} mm`,
    theory: (mm: string, uncertaintyMm: string) =>
      `${mm} mm, from theory; standard uncertainty ${uncertaintyMm} mm`,
    assumed: (mm: string, uncertaintyMm: string) =>
      `${mm} mm, assumed; standard uncertainty ${uncertaintyMm} mm`,
  },
  theory: 'Predicted speed',
  noTheory: 'note the air’s temperature to compare',
  difference: 'Difference from prediction',
  apart: (mps: string) => `${mps} m/s, more than the uncertainties explain`,
  within: (mps: string) => `${mps} m/s, within the uncertainties`,
};
