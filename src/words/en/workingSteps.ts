import { counted } from './grammar.ts';

/** Titles of the steps of the working, and the words among their numbers. */
export const workingStep = {
  halfWave: 'Half a wavelength from the difference of two lengths',
  wavelength: 'Wavelength',
  endCorrection: 'End correction',
  columnLength: 'Length of the sounding column',
  speedInTube: 'Speed of the wave in the tube',
  allMarks: 'All marks together',
  allMarksAndMouth: 'All marks and the mouth together',
  allMarksFormula: 'L = (2n − 1)·v/4f − e (closed), L = n·v/2f − 2e (open)',
  fitOf: (marks: number, chiSquared: string, degrees: number) =>
    `v and e from ${marks === 1 ? 'the mark' : `all ${marks} marks`} by weighted least squares; χ² = ${chiSquared} for ${counted(degrees, 'degree')} of freedom`,
  fitWithMouth: (marks: number, mouth: string, chiSquared: string, degrees: number) =>
    `v and e from ${marks === 1 ? 'the mark' : `all ${marks} marks`} and what is known of this mouth (${mouth}) by weighted least squares; χ² = ${chiSquared} for ${counted(degrees, 'degree')} of freedom`,
  fitGives: (mps: string, endMm: string) => `c = ${mps} m/s in free air, e = ${endMm} mm`,
  freeAir: 'Free air: the walls slow the wave',
  standardUncertainty: 'Standard uncertainty',
  standardFormula: 'u = √(u₁² + u₂² + …), the lines of the budget',
  shortened: ', lines below 1 % of u left out',
  expandedUncertainty: 'Expanded uncertainty, 95 %',
  expandedFormula: 'U = k·u, k from Student’s t',
  theory: 'Predicted speed',
  theoryFormula: 'c(t, h, p), Cramer 1993',
  gasAt: (gas: string, celsius: string) => `${gas} at t = ${celsius} °C`,
  difference: 'Difference from the prediction',
  differenceFormula: 'Δ = c − c(predicted), Eₙ = Δ/√(U² + U(predicted)²)',
  centres: 'Places shown as the centre: each for itself',
  loudest: 'Loudest places: beside the resonance, with one fork and setup to the same side',
  placeFormula: 'u(place) = a·b',
  loudestFormula: 'u(place) = a·b, a² = q/√(q² − 1) − 1',
  widest: (marks: number, cm: string) =>
    marks === 1 ? `1 mark, at ${cm} cm` : `of ${marks} marks the widest, at ${cm} cm`,
  halfWidth: (part: string, mm: string) => `${part} · ${mm} mm half width`,
  halfWidthUsual: (part: string, mm: string) => `${part} · ${mm} mm half width, in a usual tube`,
  rise: (decibels: string) => `rise ${decibels} dB over the fork alone`,
  riseAssumed: (decibels: string) => `rise taken as ${decibels} dB over the fork alone`,
  placeGives: (mm: string, mps: string) => `u(place) = ${mm} mm, ${mps} m/s of u`,
  placeInLengths: (mm: string) => `u(place) = ${mm} mm, part of each length’s own u`,
};
