import type { LaterWords } from '../catalogue.ts';

export const practiceTruth: LaterWords['practiceTruth'] = {
  speed: (mps) => `La velocidad verdadera es ${mps}\u00a0m/s.`,
  covered: (off, percent) =>
    `Tu resultado se desvía ${off}\u00a0m/s (${percent}\u00a0%), y su incertidumbre lo cubre.`,
  notCovered: (off, percent) =>
    `Tu resultado se desvía ${off}\u00a0m/s (${percent}\u00a0%), más de lo que dice su incertidumbre.`,
  fork: (hertz) => `La frecuencia verdadera del diapasón es ${hertz}\u00a0Hz.`,
  whyLoudest:
    'La posición más sonora no está justo en la resonancia: el micrófono oye también el propio diapasón, y los dos juntos, diapasón y columna, suenan más fuerte un poco al lado.',
};

export const practiceReading: LaterWords['practiceReading'] = {
  typed: (mark, centimetres) => `${mark}: has escrito ${centimetres}\u00a0cm.`,
  loudestLonger: (resonance, loudest, apartMm) =>
    `La columna resuena a ${resonance}\u00a0cm y suena más fuerte a ${loudest}\u00a0cm, ${apartMm}\u00a0mm más larga.`,
  loudestShorter: (resonance, loudest, apartMm) =>
    `La columna resuena a ${resonance}\u00a0cm y suena más fuerte a ${loudest}\u00a0cm, ${apartMm}\u00a0mm más corta.`,
  atResonance: 'Bien leída, en la resonancia.',
  atLoudest: 'Bien leída, en la posición más sonora.',
  between: 'Bien leída, entre las dos.',
  tooLong: (millimetres) => `A tu longitud le sobran ${millimetres}\u00a0mm para la resonancia.`,
  tooShort: (millimetres) => `A tu longitud le faltan ${millimetres}\u00a0mm para la resonancia.`,
};
