import type { FirstWords } from '../catalogue.ts';

export const resultFact: FirstWords['resultFact'] = {
  uncertainty: 'Unsicherheit',
  coverage: (factor) => `Der ±-Bereich enthält den wahren Wert in 95 von 100 Fällen (k = ${factor})`,
  endCorrection: 'Mündungskorrektur',
  endFrom: {
    measured: (mm, uncertaintyMm) => `${mm} mm, gemessen; Standardunsicherheit ${uncertaintyMm} mm`,
    theory: (mm, uncertaintyMm) => `${mm} mm, aus der Theorie; Standardunsicherheit ${uncertaintyMm} mm`,
    assumed: (mm, uncertaintyMm) => `${mm} mm, angenommen; Standardunsicherheit ${uncertaintyMm} mm`,
  },
  theory: 'Berechnete Geschwindigkeit',
  noTheory: 'zum Vergleichen die Lufttemperatur notieren',
  difference: 'Unterschied zur Berechnung',
  apart: (mps) => `${mps} m/s, mehr als die Unsicherheiten erklären`,
  within: (mps) => `${mps} m/s, innerhalb der Unsicherheiten`,
};
