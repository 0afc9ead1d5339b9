import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const recordFault: FirstWords['recordFault'] = {
  at: (path, what) => `${path}: ${what}`,
  mustBe: {
    object: (found) => `muss ein Objekt sein; da steht: ${found}.`,
    'whole-number': (found) => `muss eine ganze Zahl sein; da steht: ${found}.`,
    flag: (found) => `muss true oder false sein; da steht: ${found}.`,
    text: (found, longest) => `muss ein Text von höchstens ${longest} Zeichen sein; da steht: ${found}.`,
    list: (found, longest) =>
      `muss eine Liste mit höchstens ${counted(longest, 'Eintrag', 'Einträgen')} sein; da steht: ${found}.`,
    number: (found, lowest, highest) =>
      `muss eine Zahl von ${lowest} bis ${highest} sein; da steht: ${found}.`,
    choice: (found, choices) => `muss einer dieser Werte sein: ${choices}; da steht: ${found}.`,
    reading: (found, lowest, highest, zeroOffset) =>
      `muss von ${lowest} bis ${highest} sein, damit die Nullpunktverschiebung von ${zeroOffset} eine Säule übrig lässt; da steht: ${found}.`,
  },
  unequalLists: (one, other) => `muss in ${one} ebenso viele Werte haben wie in ${other}.`,
  sameId: {
    forks: 'forks: zwei Gabeln haben dieselbe id.',
    places: 'places: zwei Orte haben dieselbe id.',
    marks: 'marks: zwei Marken haben dieselbe id.',
  },
  ofMark: {
    fork: (markId, id) => `Marke ${markId}: In dieser Datei gibt es keine Gabel „${id}“.`,
    place: (markId, id) => `Marke ${markId}: In dieser Datei gibt es keinen Ort „${id}“.`,
  },
  ofPresent: {
    fork: (id) => `present: In dieser Datei gibt es keine Gabel „${id}“.`,
    place: (id) => `present: In dieser Datei gibt es keinen Ort „${id}“.`,
  },
  noObject: 'Das ist kein Experiment: Erwartet wird ein JSON-Objekt.',
  newerVersion: (version, newest) =>
    `Das hat eine neuere Version dieser Seite gespeichert (schemaVersion ist ${version}; diese liest bis ${newest}). Lade die Seite neu, damit sie aktuell ist, und öffne es dann noch einmal.`,
  noVersion: (found, newest) =>
    `schemaVersion muss eine ganze Zahl von 1 bis ${newest} sein; da steht: ${found}. Vielleicht gehört die Datei zu einem anderen Programm.`,
  unreadable: (said) => `Das lässt sich nicht lesen (${said}).`,
};
