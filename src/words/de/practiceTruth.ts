import type { LaterWords } from '../catalogue.ts';

export const practiceTruth: LaterWords['practiceTruth'] = {
  speed: (mps) => `Die wahre Geschwindigkeit ist ${mps} m/s.`,
  covered: (off, percent) =>
    `Dein Ergebnis weicht um ${off} m/s (${percent} %) davon ab; das liegt innerhalb seiner Unsicherheit.`,
  notCovered: (off, percent) =>
    `Dein Ergebnis weicht um ${off} m/s (${percent} %) davon ab, mehr als seine Unsicherheit angibt.`,
  fork: (hertz) => `Die wahre Frequenz der Gabel ist ${hertz} Hz.`,
  whyLoudest:
    'Die lauteste Stelle ist nicht ganz bei der Resonanz: Das Mikrofon hört auch die Gabel selbst, und Gabel und Säule zusammen sind ein wenig daneben am lautesten.',
};

export const practiceReading: LaterWords['practiceReading'] = {
  typed: (mark, centimetres) => `${mark}: eingetippt ${centimetres} cm.`,
  loudestLonger: (resonance, loudest, apartMm) =>
    `Die Säule ist bei ${resonance} cm in Resonanz und bei ${loudest} cm am lautesten, ${apartMm} mm länger.`,
  loudestShorter: (resonance, loudest, apartMm) =>
    `Die Säule ist bei ${resonance} cm in Resonanz und bei ${loudest} cm am lautesten, ${apartMm} mm kürzer.`,
  atResonance: 'Gut abgelesen, bei der Resonanz.',
  atLoudest: 'Gut abgelesen, an der lautesten Stelle.',
  between: 'Gut abgelesen, zwischen beiden.',
  tooLong: (millimetres) => `Deine Länge ist für die Resonanz ${millimetres} mm zu groß.`,
  tooShort: (millimetres) => `Deine Länge ist für die Resonanz ${millimetres} mm zu klein.`,
};
