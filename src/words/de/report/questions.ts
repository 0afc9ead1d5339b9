import type { LaterWords } from '../../catalogue.ts';
import { ordinal } from '../grammar.ts';

export const questions: LaterWords['questions'] = {
  outlier: (cm, apartMm) =>
    `Die Marke bei ${cm}\u00a0cm liegt ${apartMm}\u00a0mm neben den anderen. Was kann passiert sein, und wie würdest du es herausfinden?`,
  outlierHidden: (cm) =>
    `Die Marke bei ${cm}\u00a0cm liegt neben den anderen. Was kann passiert sein, und wie würdest du es herausfinden?`,
  largestPart: (source) =>
    `Der größte Beitrag zur Unsicherheit: ${source}. Was würdest du ändern, um ihn zu halbieren?`,
  largestPartHidden:
    'Woher kommt der größte Teil der Unsicherheit? Was würdest du ändern, um ihn zu halbieren?',
  sources: {
    reading: 'Ablesen der Längen',
    fork: 'Frequenz der Gabel',
    loudest: 'lauteste Stelle, die neben der Resonanz liegt',
    zero: 'Nullpunkt des Maßstabs',
    scale: 'Teilung des Maßstabs',
    end: 'Mündungskorrektur',
    wall: 'Rohrwand, die die Welle bremst',
  },
  endMeasured: (endMm, diameterMm) =>
    `Deine Mündungskorrektur ist ${endMm}\u00a0mm bei einem Rohr von ${diameterMm}\u00a0mm. Wie groß wäre sie bei einem doppelt so weiten Rohr, und wie würdest du das prüfen?`,
  endMeasuredHidden:
    'Die Säule wirkt länger, als sie ist. Woran siehst du das in deinen Längen? Wie ändert sich die Geschwindigkeit, wenn du es nicht berücksichtigst?',
  oneOrder: (forkHz) =>
    `Alle Marken gehören zu einer Resonanz. Was verrät dir eine zweite Resonanz der Gabel mit ${forkHz}\u00a0Hz, was diese nicht kann?`,
  noTemperature: (speedMps) =>
    `Es wurde keine Temperatur notiert. Bei welcher Lufttemperatur wäre die Geschwindigkeit ${speedMps}\u00a0m/s? Ist das in eurem Raum wahrscheinlich?`,
  noTemperatureHidden:
    'Es wurde keine Temperatur notiert. Welche Lufttemperatur würde zu deiner Geschwindigkeit gehören? Ist das in eurem Raum wahrscheinlich?',
  apartFromTheory: (differenceMps) =>
    `Gemessene minus berechnete Geschwindigkeit ist ${differenceMps}\u00a0m/s, mehr als die Unsicherheiten erklären. Welcher einzelne Fehler würde genau diesen Unterschied ergeben?`,
  apartFromTheoryHidden:
    'Vergleiche deine Geschwindigkeit mit der berechneten. Welcher einzelne Fehler würde genau diesen Unterschied ergeben?',
  nearTheory: (differenceMps) =>
    `Gemessene minus berechnete Geschwindigkeit ist ${differenceMps}\u00a0m/s, innerhalb der Unsicherheiten. Beweist das die Theorie? Wie klein dürfte ein Unterschied sein, damit du ihn noch bemerkst?`,
  nearTheoryHidden:
    'Vergleiche deine Geschwindigkeit mit der berechneten. Wie klein dürfte ein Unterschied sein, damit du ihn noch bemerkst?',
  twoPlaces: (oneMps, otherMps) =>
    `Du hast an zwei Orten ${oneMps} und ${otherMps}\u00a0m/s gefunden. Welche Fehler sind an beiden gleich, und was heißt das für den Unterschied?`,
  twoPlacesHidden:
    'Du hast an zwei Orten gemessen. Welche Fehler sind an beiden gleich, und was heißt das für den Unterschied der Geschwindigkeiten?',
  nextResonance: (order, forkHz) =>
    `Bei welcher Länge würdest du die ${ordinal(order)} Resonanz der Gabel mit ${forkHz}\u00a0Hz suchen? Sag auch, wie sicher du bist.`,
};
