import type { LaterWords } from '../catalogue.ts';

export const practiceTruth: LaterWords['practiceTruth'] = {
  speed: (mps) => `La vitesse vraie est de ${mps}\u00a0m/s.`,
  covered: (off, percent) =>
    `Votre résultat s’en écarte de ${off}\u00a0m/s (${percent}\u00a0%), ce que son incertitude couvre.`,
  notCovered: (off, percent) =>
    `Votre résultat s’en écarte de ${off}\u00a0m/s (${percent}\u00a0%), plus que son incertitude ne l’indique.`,
  fork: (hertz) => `La fréquence vraie du diapason est de ${hertz}\u00a0Hz.`,
  whyLoudest:
    'La position la plus sonore n’est pas tout à fait à la résonance : le micro entend aussi le diapason lui-même, et les deux ensemble sont le plus forts un peu à côté.',
};

export const practiceReading: LaterWords['practiceReading'] = {
  typed: (mark, centimetres) => `${mark}\u00a0: vous avez tapé ${centimetres}\u00a0cm.`,
  loudestLonger: (resonance, loudest, apartMm) =>
    `La colonne résonne à ${resonance}\u00a0cm et s’entend le plus fort à ${loudest}\u00a0cm, ${apartMm}\u00a0mm plus longue.`,
  loudestShorter: (resonance, loudest, apartMm) =>
    `La colonne résonne à ${resonance}\u00a0cm et s’entend le plus fort à ${loudest}\u00a0cm, ${apartMm}\u00a0mm plus courte.`,
  atResonance: 'Bonne lecture, à la résonance.',
  atLoudest: 'Bonne lecture, à la position la plus sonore.',
  between: 'Bonne lecture, entre les deux.',
  tooLong: (millimetres) => `Votre longueur est trop grande de ${millimetres}\u00a0mm pour la résonance.`,
  tooShort: (millimetres) => `Votre longueur est trop petite de ${millimetres}\u00a0mm pour la résonance.`,
};
