import type { LaterWords } from '../catalogue.ts';

export const practiceTruth: LaterWords['practiceTruth'] = {
  speed: (mps) => `Die wahre Geschwindigkeit ist ${mps}\u00a0m/s.`,
  covered: (off, percent) =>
    `Dein Ergebnis weicht um ${off}\u00a0m/s (${percent}\u00a0%) davon ab; das liegt innerhalb seiner Unsicherheit.`,
  notCovered: (off, percent) =>
    `Dein Ergebnis weicht um ${off}\u00a0m/s (${percent}\u00a0%) davon ab, mehr als seine Unsicherheit angibt.`,
  fork: (hertz) => `Die wahre Frequenz der Gabel ist ${hertz}\u00a0Hz.`,
  whyLoudest:
    'Die lauteste Stelle ist nicht ganz bei der Resonanz: Das Mikrofon hört auch die Gabel selbst, und Gabel und Säule zusammen sind ein wenig daneben am lautesten.',
};

export const practiceReading: LaterWords['practiceReading'] = {
  typed: (mark, centimetres) => `${mark}: eingetippt ${centimetres}\u00a0cm.`,
  loudestLonger: (resonance, loudest, apartMm) =>
    `Die Säule ist bei ${resonance}\u00a0cm in Resonanz und bei ${loudest}\u00a0cm am lautesten, ${apartMm}\u00a0mm länger.`,
  loudestShorter: (resonance, loudest, apartMm) =>
    `Die Säule ist bei ${resonance}\u00a0cm in Resonanz und bei ${loudest}\u00a0cm am lautesten, ${apartMm}\u00a0mm kürzer.`,
  atResonance: 'Gut abgelesen, bei der Resonanz.',
  atLoudest: 'Gut abgelesen, an der lautesten Stelle.',
  between: 'Gut abgelesen, zwischen beiden.',
  tooLong: (millimetres) => `Deine Länge ist für die Resonanz ${millimetres}\u00a0mm zu groß.`,
  tooShort: (millimetres) => `Deine Länge ist für die Resonanz ${millimetres}\u00a0mm zu klein.`,
};
