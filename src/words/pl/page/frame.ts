import type { FirstWords } from '../../catalogue.ts';
import { counted, plural } from '../grammar.ts';

export const frame: FirstWords['frame'] = {
  heading: 'Stanowisko ze słupem powietrza',
  views: 'Widoki',
  viewNames: {
    measure: 'Pomiar',
    apparatus: 'Układ',
    check: 'Sprawdź',
    working: 'Obliczenia',
    compare: 'Porównaj',
    records: 'Archiwum',
  },
  keys: 'Klawisze',
  language: 'Język',
  languageNotLoaded:
    'Nie udało się wczytać tego języka, więc strona zostaje przy obecnym. Spróbuj ponownie, gdy będzie internet.',
  theme: 'Motyw',
  themeNames: { system: 'auto', light: 'jasny', dark: 'ciemny' },
  drop: 'Upuść, żeby otworzyć',
  groupsTaken: (count) => `Dodano ${counted(count, 'grupę', 'grupy', 'grup')} do widoku Klasa.`,
  close: 'Zamknij',
  doubts: (count) => counted(count, 'ostrzeżenie', 'ostrzeżenia', 'ostrzeżeń'),
  lengthsToType: (count) => `Wpisz ${plural(count, 'długość', `${count} długości`, `${count} długości`)}`,
  saved: {
    nothing: '',
    saved: 'Zapisano',
    saving: 'Zapisywanie…',
    refused: 'Nie zapisano na tym urządzeniu',
  },
};

export const failed: FirstWords['failed'] = {
  heading: (part) => (part === null ? 'Ta część strony zawiodła.' : `Ta część strony zawiodła: ${part}.`),
  detail:
    'Cała reszta działa dalej. Spróbuj ponownie. Jeśli zawiodła tuż po twoim ostatnim kroku, cofnij go. Plik doświadczenia możesz zapisać w każdym przypadku.',
  again: 'Spróbuj ponownie',
  undo: 'Cofnij ostatni krok',
  save: 'Zapisz plik doświadczenia',
};
