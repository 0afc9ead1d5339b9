import type { LaterWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const workingStep: LaterWords['workingStep'] = {
  halfWave: 'Media longitud de onda, de la diferencia de dos longitudes',
  wavelength: 'Longitud de onda',
  endCorrection: 'Corrección de extremo',
  columnLength: 'Longitud de la columna que vibra',
  speedInTube: 'Velocidad de la onda en el tubo',
  allMarks: 'Todas las marcas juntas',
  allMarksAndMouth: 'Todas las marcas y la boca juntas',
  allMarksFormula: 'L = (2n − 1)·v/4f − e (cerrada), L = n·v/2f − 2e (abierta)',
  fitOf: (marks, chiSquared, degrees) =>
    `v y e a partir de ${marks === 1 ? 'la marca' : `las ${marks} marcas`} por mínimos cuadrados ponderados; χ² = ${chiSquared} con ${counted(degrees, 'grado', 'grados')} de libertad`,
  fitWithMouth: (marks, mouth, chiSquared, degrees) =>
    `v y e a partir de ${marks === 1 ? 'la marca' : `las ${marks} marcas`} y de lo que se sabe de esta boca (${mouth}) por mínimos cuadrados ponderados; χ² = ${chiSquared} con ${counted(degrees, 'grado', 'grados')} de libertad`,
  fitGives: (mps, endMm) => `c = ${mps}\u00a0m/s en el aire, fuera del tubo; e = ${endMm}\u00a0mm`,
  freeAir: 'Fuera del tubo: sin el frenado por la pared',
  standardUncertainty: 'Incertidumbre típica',
  standardFormula: 'u = √(u₁² + u₂² + …), las líneas del balance',
  shortened: ', sin las líneas menores del 1\u00a0% de u',
  expandedUncertainty: 'Incertidumbre expandida, 95\u00a0%',
  expandedFormula: 'U = k·u, k de la t de Student',
  theory: 'Velocidad prevista',
  theoryFormula: 'c(t, h, p), Cramer 1993',
  gasAt: (gas, celsius) => `${gas} a t = ${celsius}\u00a0°C`,
  difference: 'Diferencia con la prevista',
  differenceFormula: 'Δ = c − c(prevista), Eₙ = Δ/√(U² + U(prevista)²)',
  centres: 'Posiciones mostradas como el centro: cada una por sí misma',
  loudest:
    'Posiciones más sonoras: al lado de la resonancia, hacia el mismo lado con un mismo diapasón y montaje',
  placeFormula: 'u(posición) = a·b',
  loudestFormula: 'u(posición) = a·b, a² = q/√(q² − 1) − 1',
  widest: (marks, cm) =>
    marks === 1 ? `1 marca, en ${cm}\u00a0cm` : `la más ancha de ${marks} marcas, en ${cm}\u00a0cm`,
  halfWidth: (part, mm) => `${part} · ${mm}\u00a0mm de semianchura`,
  halfWidthUsual: (part, mm) => `${part} · ${mm}\u00a0mm de semianchura, en un tubo habitual`,
  rise: (decibels) => `subida de ${decibels}\u00a0dB sobre el diapasón solo`,
  riseAssumed: (decibels) => `subida supuesta de ${decibels}\u00a0dB sobre el diapasón solo`,
  placeGives: (mm, mps) => `u(posición) = ${mm}\u00a0mm, que aporta ${mps}\u00a0m/s a u`,
  placeInLengths: (mm) => `u(posición) = ${mm}\u00a0mm, parte de la u de cada longitud`,
};
