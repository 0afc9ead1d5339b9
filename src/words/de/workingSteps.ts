import type { LaterWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const workingStep: LaterWords['workingStep'] = {
  halfWave: 'Halbe Wellenlänge aus der Differenz zweier Längen',
  wavelength: 'Wellenlänge',
  endCorrection: 'Mündungskorrektur',
  columnLength: 'Länge der schwingenden Säule',
  speedInTube: 'Geschwindigkeit der Welle im Rohr',
  allMarks: 'Alle Marken zusammen',
  allMarksAndMouth: 'Alle Marken und die Mündung zusammen',
  allMarksFormula: 'L = (2n − 1)·v/4f − e (geschlossen), L = n·v/2f − 2e (offen)',
  fitOf: (marks, chiSquared, degrees) =>
    `v und e aus ${marks === 1 ? 'der Marke' : `allen ${marks} Marken`} mit der Methode der gewichteten kleinsten Quadrate; χ² = ${chiSquared} bei ${counted(degrees, 'Freiheitsgrad', 'Freiheitsgraden')}`,
  fitWithMouth: (marks, mouth, chiSquared, degrees) =>
    `v und e aus ${marks === 1 ? 'der Marke' : `allen ${marks} Marken`} und dem, was über diese Mündung bekannt ist (${mouth}), mit der Methode der gewichteten kleinsten Quadrate; χ² = ${chiSquared} bei ${counted(degrees, 'Freiheitsgrad', 'Freiheitsgraden')}`,
  fitGives: (mps, endMm) => `c = ${mps}\u00a0m/s in freier Luft, e = ${endMm}\u00a0mm`,
  freeAir: 'Freie Luft: Die Rohrwand bremst die Welle',
  standardUncertainty: 'Standardunsicherheit',
  standardFormula: 'u = √(u₁² + u₂² + …), die Zeilen des Budgets',
  shortened: ', ohne die Zeilen unter 1\u00a0% von u',
  expandedUncertainty: 'Erweiterte Unsicherheit, 95\u00a0%',
  expandedFormula: 'U = k·u, k aus der t-Verteilung',
  theory: 'Berechnete Geschwindigkeit',
  theoryFormula: 'c(t, h, p), Cramer 1993',
  gasAt: (gas, celsius) => `${gas} bei t = ${celsius}\u00a0°C`,
  difference: 'Unterschied zur Berechnung',
  differenceFormula: 'Δ = c − c(berechnet), Eₙ = Δ/√(U² + U(berechnet)²)',
  centres: 'Stellen, die als Mitte gezeigt wurden: jede für sich',
  loudest: 'Lauteste Stellen: neben der Resonanz, bei gleicher Gabel und gleichem Aufbau auf derselben Seite',
  placeFormula: 'u(Stelle) = a·b',
  loudestFormula: 'u(Stelle) = a·b, a² = q/√(q² − 1) − 1',
  widest: (marks, cm) =>
    marks === 1
      ? `1 Marke, bei ${cm}\u00a0cm`
      : `die breiteste Resonanz von ${marks} Marken, bei ${cm}\u00a0cm`,
  halfWidth: (part, mm) => `${part} · ${mm}\u00a0mm halbe Breite`,
  halfWidthUsual: (part, mm) => `${part} · ${mm}\u00a0mm halbe Breite, in einem üblichen Rohr`,
  rise: (decibels) => `Anstieg ${decibels}\u00a0dB über der Gabel allein`,
  riseAssumed: (decibels) => `Anstieg mit ${decibels}\u00a0dB über der Gabel allein angenommen`,
  placeGives: (mm, mps) => `u(Stelle) = ${mm}\u00a0mm, das sind ${mps}\u00a0m/s von u`,
  placeInLengths: (mm) => `u(Stelle) = ${mm}\u00a0mm, in u jeder Länge enthalten`,
};
