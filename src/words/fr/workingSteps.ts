import type { LaterWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const workingStep: LaterWords['workingStep'] = {
  halfWave: 'Demi-longueur d’onde, par différence de deux longueurs',
  wavelength: 'Longueur d’onde',
  endCorrection: 'Correction d’extrémité',
  columnLength: 'Longueur de la colonne qui vibre',
  speedInTube: 'Vitesse de l’onde dans le tube',
  allMarks: 'Tous les repères ensemble',
  allMarksAndMouth: 'Tous les repères et l’embouchure ensemble',
  allMarksFormula: 'L = (2n − 1)·v/4f − e (fermée), L = n·v/2f − 2e (ouverte)',
  fitOf: (marks, chiSquared, degrees) =>
    `v et e tirés ${marks === 1 ? 'du repère' : `des ${marks} repères`} par moindres carrés pondérés\u00a0; χ² = ${chiSquared} pour ${counted(degrees, 'degré', 'degrés')} de liberté`,
  fitWithMouth: (marks, mouth, chiSquared, degrees) =>
    `v et e tirés ${marks === 1 ? 'du repère' : `des ${marks} repères`} et de ce qu’on sait de cette embouchure (${mouth}) par moindres carrés pondérés\u00a0; χ² = ${chiSquared} pour ${counted(degrees, 'degré', 'degrés')} de liberté`,
  fitGives: (mps, endMm) => `c = ${mps}\u00a0m/s à l’air libre, e = ${endMm}\u00a0mm`,
  freeAir: 'Air libre : la paroi ralentit l’onde',
  standardUncertainty: 'Incertitude-type',
  standardFormula: 'u = √(u₁² + u₂² + …), les lignes du bilan',
  shortened: ', sans les lignes inférieures à 1\u00a0% de u',
  expandedUncertainty: 'Incertitude élargie, 95\u00a0%',
  expandedFormula: 'U = k·u, k tiré de la loi de Student',
  theory: 'Vitesse prévue',
  theoryFormula: 'c(t, h, p), Cramer 1993',
  gasAt: (gas, celsius) => `${gas} à t = ${celsius}\u00a0°C`,
  difference: 'Écart à la vitesse prévue',
  differenceFormula: 'Δ = c − c(prévue), Eₙ = Δ/√(U² + U(prévue)²)',
  centres: 'Positions montrées comme le centre : chacune pour elle-même',
  loudest:
    'Positions les plus sonores : à côté de la résonance, toujours du même côté avec un même diapason et un même montage',
  placeFormula: 'u(position) = a·b',
  loudestFormula: 'u(position) = a·b, a² = q/√(q² − 1) − 1',
  widest: (marks, cm) =>
    marks === 1
      ? `1 repère, à ${cm}\u00a0cm`
      : `la résonance la plus large des ${marks} repères, à ${cm}\u00a0cm`,
  halfWidth: (part, mm) => `${part} · ${mm}\u00a0mm de demi-largeur`,
  halfWidthUsual: (part, mm) => `${part} · ${mm}\u00a0mm de demi-largeur, dans un tube habituel`,
  rise: (decibels) => `hausse de ${decibels}\u00a0dB par rapport au diapason seul`,
  riseAssumed: (decibels) => `hausse supposée de ${decibels}\u00a0dB par rapport au diapason seul`,
  placeGives: (mm, mps) => `u(position) = ${mm}\u00a0mm, soit ${mps}\u00a0m/s dans u`,
  placeInLengths: (mm) => `u(position) = ${mm}\u00a0mm, comprise dans le u de chaque longueur`,
};
