import type { LaterWords } from '../catalogue.ts';

export const practiceTruth: LaterWords['practiceTruth'] = {
  speed: (mps) => `La velocidad verdadera es ${mps} m/s.`,
  covered: (off, percent) => `Tu resultado se desvía ${off} m/s (${percent} %), y su incertidumbre lo cubre.`,
  notCovered: (off, percent) =>
    `Tu resultado se desvía ${off} m/s (${percent} %), más de lo que dice su incertidumbre.`,
  fork: (hertz) => `La frecuencia verdadera del diapasón es ${hertz} Hz.`,
  whyLoudest:
    'La posición más sonora no está justo en la resonancia: el micrófono oye también el propio diapasón, y los dos juntos, diapasón y columna, suenan más fuerte un poco al lado.',
};

export const practiceReading: LaterWords['practiceReading'] = {
  typed: (mark, centimetres) => `${mark}: has escrito ${centimetres} cm.`,
  loudestLonger: (resonance, loudest, apartMm) =>
    `La columna resuena a ${resonance} cm y suena más fuerte a ${loudest} cm, ${apartMm} mm más larga.`,
  loudestShorter: (resonance, loudest, apartMm) =>
    `La columna resuena a ${resonance} cm y suena más fuerte a ${loudest} cm, ${apartMm} mm más corta.`,
  atResonance: 'Bien leída, en la resonancia.',
  atLoudest: 'Bien leída, en la posición más sonora.',
  between: 'Bien leída, entre las dos.',
  tooLong: (millimetres) => `A tu longitud le sobran ${millimetres} mm para la resonancia.`,
  tooShort: (millimetres) => `A tu longitud le faltan ${millimetres} mm para la resonancia.`,
};
