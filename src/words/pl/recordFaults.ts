import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const recordFault: FirstWords['recordFault'] = {
  at: (path, what) => `${path}: ${what}`,
  mustBe: {
    object: (found) => `powinien tu być obiekt; jest: ${found}.`,
    'whole-number': (found) => `powinna tu być liczba całkowita; jest: ${found}.`,
    flag: (found) => `powinno tu być true lub false; jest: ${found}.`,
    text: (found, longest) =>
      `powinien tu być tekst, najwyżej ${counted(longest, 'znak', 'znaki', 'znaków')}; jest: ${found}.`,
    list: (found, longest) =>
      `powinna tu być lista, najwyżej ${counted(longest, 'element', 'elementy', 'elementów')}; jest: ${found}.`,
    number: (found, lowest, highest) => `powinna tu być liczba od ${lowest} do ${highest}; jest: ${found}.`,
    choice: (found, choices) => `powinna tu być jedna z wartości: ${choices}; jest: ${found}.`,
    reading: (found, lowest, highest, zeroOffset) =>
      `powinna tu być liczba od ${lowest} do ${highest}, żeby przy przesunięciu zera ${zeroOffset} został słup; jest: ${found}.`,
  },
  unequalLists: (one, other) => `powinno być tyle samo wartości w ${one} co w ${other}.`,
  sameId: {
    forks: 'forks: dwa kamertony mają to samo id.',
    places: 'places: dwa miejsca mają to samo id.',
    marks: 'marks: dwa znaczniki mają to samo id.',
  },
  ofMark: {
    fork: (markId, id) => `znacznik ${markId}: w tym pliku nie ma kamertonu „${id}”.`,
    place: (markId, id) => `znacznik ${markId}: w tym pliku nie ma miejsca „${id}”.`,
  },
  ofPresent: {
    fork: (id) => `present: w tym pliku nie ma kamertonu „${id}”.`,
    place: (id) => `present: w tym pliku nie ma miejsca „${id}”.`,
  },
  noObject: 'To nie jest doświadczenie: powinien tu być obiekt JSON.',
  newerVersion: (version, newest) =>
    `To zapisała nowsza wersja tej strony (schemaVersion to ${version}; ta czyta do ${newest}). Wczytaj stronę ponownie, żeby ją zaktualizować, i otwórz to jeszcze raz.`,
  noVersion: (found, newest) =>
    `schemaVersion powinno być liczbą całkowitą od 1 do ${newest}; jest: ${found}. To może być plik innego programu.`,
  unreadable: (said) => `Tego nie da się odczytać (${said}).`,
};
