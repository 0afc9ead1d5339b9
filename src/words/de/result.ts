import type { FirstWords } from '../catalogue.ts';

export const resultFact: FirstWords['resultFact'] = {
  uncertainty: 'Unsicherheit',
  coverage: (factor) => `Der ±-Bereich enthält den wahren Wert in 95 von 100 Fällen (k = ${factor})`,
  endCorrection: 'Mündungskorrektur',
  endFrom: {
    measured: (mm, uncertaintyMm) => `${mm}\u00a0mm, gemessen; Standardunsicherheit ${uncertaintyMm}\u00a0mm`,
    theory: (mm, uncertaintyMm) =>
      `${mm}\u00a0mm, aus der Theorie; Standardunsicherheit ${uncertaintyMm}\u00a0mm`,
    assumed: (mm, uncertaintyMm) =>
      `${mm}\u00a0mm, angenommen; Standardunsicherheit ${uncertaintyMm}\u00a0mm`,
  },
  theory: 'Berechnete Geschwindigkeit',
  noTheory: 'zum Vergleichen die Lufttemperatur notieren',
  difference: 'Unterschied zur Berechnung',
  apart: (mps) => `${mps}\u00a0m/s, mehr als die Unsicherheiten erklären`,
  within: (mps) => `${mps}\u00a0m/s, innerhalb der Unsicherheiten`,
};
