import type { LaterWords } from '../catalogue.ts';

export const groupReason: LaterWords['groupReason'] = {
  otherFork: (fittingHertz, notedHertz) =>
    `Die Längen passen zu einer Gabel mit ${fittingHertz}\u00a0Hz, notiert sind aber ${notedHertz}\u00a0Hz. War es eine andere Gabel?`,
  allLong: (centimetres) =>
    `Wenn die Geschwindigkeit der Klasse stimmt, sind alle Längen etwa ${centimetres}\u00a0cm zu groß.`,
  allShort: (centimetres) =>
    `Wenn die Geschwindigkeit der Klasse stimmt, sind alle Längen etwa ${centimetres}\u00a0cm zu klein.`,
  checkZero: {
    closed:
      'Liegt der Nullpunkt des Maßstabs am geschlossenen Ende des Rohrs? Wenn nicht, gib die Nullpunktverschiebung ein.',
    open: 'Liegt der Nullpunkt des Maßstabs am anderen Ende des Rohrs? Wenn nicht, gib die Nullpunktverschiebung ein.',
    mixed:
      'Liegt der Nullpunkt des Maßstabs am Ende der Säule? Wenn nicht, gib die Nullpunktverschiebung ein.',
  },
  markOff: (mark, centimetres, cause) => `${mark} (${centimetres}\u00a0cm): ${cause}`,
  allLonger: (percent) =>
    `Die Längen passen zueinander, sind aber für die Geschwindigkeit der Klasse alle ${percent}\u00a0% zu groß. Prüfe die Frequenz der Gabel, den Maßstab und die Temperatur.`,
  allShorter: (percent) =>
    `Die Längen passen zueinander, sind aber für die Geschwindigkeit der Klasse alle ${percent}\u00a0% zu klein. Prüfe die Frequenz der Gabel, den Maßstab und die Temperatur.`,
};
