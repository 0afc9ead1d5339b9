import type { LaterWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const workingStep: LaterWords['workingStep'] = {
  halfWave: 'Meio comprimento de onda, da diferença de dois comprimentos',
  wavelength: 'Comprimento de onda',
  endCorrection: 'Correção de extremidade',
  columnLength: 'Comprimento da coluna que vibra',
  speedInTube: 'Velocidade da onda no tubo',
  allMarks: 'Todas as marcas juntas',
  allMarksAndMouth: 'Todas as marcas e a boca juntas',
  allMarksFormula: 'L = (2n − 1)·v/4f − e (fechada), L = n·v/2f − 2e (aberta)',
  fitOf: (marks, chiSquared, degrees) =>
    `v e a correção e a partir ${marks === 1 ? 'da marca' : `das ${marks} marcas`} por mínimos quadrados ponderados; χ² = ${chiSquared} com ${counted(degrees, 'grau', 'graus')} de liberdade`,
  fitWithMouth: (marks, mouth, chiSquared, degrees) =>
    `v e a correção e a partir ${marks === 1 ? 'da marca' : `das ${marks} marcas`} e do que se sabe desta boca (${mouth}) por mínimos quadrados ponderados; χ² = ${chiSquared} com ${counted(degrees, 'grau', 'graus')} de liberdade`,
  fitGives: (mps, endMm) => `c = ${mps}\u00a0m/s em ar livre, e = ${endMm}\u00a0mm`,
  freeAir: 'Ar livre: a parede freia a onda',
  standardUncertainty: 'Incerteza-padrão',
  standardFormula: 'u = √(u₁² + u₂² + …), as linhas do balanço',
  shortened: ', sem as linhas abaixo de 1\u00a0% de u',
  expandedUncertainty: 'Incerteza expandida, 95\u00a0%',
  expandedFormula: 'U = k·u, k da distribuição t de Student',
  theory: 'Velocidade prevista',
  theoryFormula: 'c(t, h, p), Cramer 1993',
  gasAt: (gas, celsius) => `${gas} a t = ${celsius}\u00a0°C`,
  difference: 'Diferença em relação à prevista',
  differenceFormula: 'Δ = c − c(prevista), Eₙ = Δ/√(U² + U(prevista)²)',
  centres: 'Posições mostradas como o centro: cada uma por si',
  loudest:
    'Posições mais sonoras: ao lado da ressonância, para o mesmo lado com um mesmo diapasão e montagem',
  placeFormula: 'u(posição) = a·b',
  loudestFormula: 'u(posição) = a·b, a² = q/√(q² − 1) − 1',
  widest: (marks, cm) =>
    marks === 1 ? `1 marca, em ${cm}\u00a0cm` : `a mais larga das ${marks} marcas, em ${cm}\u00a0cm`,
  halfWidth: (part, mm) => `${part} · ${mm}\u00a0mm de meia largura`,
  halfWidthUsual: (part, mm) => `${part} · ${mm}\u00a0mm de meia largura, em um tubo comum`,
  rise: (decibels) => `aumento de ${decibels}\u00a0dB sobre o diapasão sozinho`,
  riseAssumed: (decibels) => `aumento suposto de ${decibels}\u00a0dB sobre o diapasão sozinho`,
  placeGives: (mm, mps) => `u(posição) = ${mm}\u00a0mm, ${mps}\u00a0m/s de u`,
  placeInLengths: (mm) => `u(posição) = ${mm}\u00a0mm, parte da u de cada comprimento`,
};
