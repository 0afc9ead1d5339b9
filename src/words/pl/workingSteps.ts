import type { LaterWords } from '../catalogue.ts';
import { plural } from './grammar.ts';

export const workingStep: LaterWords['workingStep'] = {
  halfWave: 'Połowa długości fali z różnicy dwóch długości',
  wavelength: 'Długość fali',
  endCorrection: 'Poprawka na końcu rury',
  columnLength: 'Długość drgającego słupa',
  speedInTube: 'Prędkość fali w rurze',
  allMarks: 'Wszystkie znaczniki razem',
  allMarksAndMouth: 'Wszystkie znaczniki i wylot razem',
  allMarksFormula: 'L = (2n − 1)·v/4f − e (zamknięty), L = n·v/2f − 2e (otwarty)',
  fitOf: (marks, chiSquared, degrees) =>
    `v i e ${marks === 1 ? 'ze znacznika' : `ze wszystkich znaczników (${marks})`} ważoną metodą najmniejszych kwadratów; χ² = ${chiSquared} przy ${degrees} ${plural(degrees, 'stopniu', 'stopniach', 'stopniach')} swobody`,
  fitWithMouth: (marks, mouth, chiSquared, degrees) =>
    `v i e ${marks === 1 ? 'ze znacznika' : `ze wszystkich znaczników (${marks})`} i z tego, co wiadomo o tym wylocie (${mouth}), ważoną metodą najmniejszych kwadratów; χ² = ${chiSquared} przy ${degrees} ${plural(degrees, 'stopniu', 'stopniach', 'stopniach')} swobody`,
  fitGives: (mps, endMm) => `c = ${mps}\u00a0m/s w swobodnym powietrzu, e = ${endMm}\u00a0mm`,
  freeAir: 'Swobodne powietrze: ścianki spowalniają falę',
  standardUncertainty: 'Niepewność standardowa',
  standardFormula: 'u = √(u₁² + u₂² + …), wiersze budżetu',
  shortened: ', bez wierszy poniżej 1\u00a0% u',
  expandedUncertainty: 'Niepewność rozszerzona, 95\u00a0%',
  expandedFormula: 'U = k·u, k z rozkładu t-Studenta',
  theory: 'Prędkość przewidywana',
  theoryFormula: 'c(t, h, p), Cramer 1993',
  gasAt: (gas, celsius) => `${gas} przy t = ${celsius}\u00a0°C`,
  difference: 'Różnica względem przewidywania',
  differenceFormula: 'Δ = c − c(przewidywana), Eₙ = Δ/√(U² + U(przewidywana)²)',
  centres: 'Miejsca wskazane jako środek: każde osobno',
  loudest:
    'Najgłośniejsze miejsca: obok rezonansu, przy tym samym kamertonie i układzie po tej samej stronie',
  placeFormula: 'u(miejsce) = a·b',
  loudestFormula: 'u(miejsce) = a·b, a² = q/√(q² − 1) − 1',
  widest: (marks, cm) =>
    marks === 1
      ? `1 znacznik, przy ${cm}\u00a0cm`
      : `najszerszy rezonans z ${marks} znaczników, przy ${cm}\u00a0cm`,
  halfWidth: (part, mm) => `${part} · ${mm}\u00a0mm połowy szerokości`,
  halfWidthUsual: (part, mm) => `${part} · ${mm}\u00a0mm połowy szerokości, w typowej rurze`,
  rise: (decibels) => `wzrost ${decibels}\u00a0dB ponad sam kamerton`,
  riseAssumed: (decibels) => `przyjęty wzrost ${decibels}\u00a0dB ponad sam kamerton`,
  placeGives: (mm, mps) => `u(miejsce) = ${mm}\u00a0mm, wkład do u: ${mps}\u00a0m/s`,
  placeInLengths: (mm) => `u(miejsce) = ${mm}\u00a0mm, część u każdej z długości`,
};
