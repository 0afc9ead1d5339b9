import type { LaterWords } from '../../catalogue.ts';
import { counted } from '../grammar.ts';

export const compare: LaterWords['compare'] = {
  region: 'Porównaj',
  heading: 'Czy różnica jest rzeczywista?',
  lead: 'Błędy wspólne dla obu wyników (ta sama linijka, ten sam kamerton) znoszą się. Liczą się tylko pozostałe.',
  by: 'Porównaj',
  ways: {
    place: 'miejsca (i ich temperatury)',
    fork: 'kamertony',
    ends: 'słup zamknięty i otwarty',
  },
  theoryHidden: 'Ta lekcja ukrywa prędkość przewidywaną.',
  noMark: 'Żaden znacznik nie ma jeszcze długości. Najpierw zaznacz rezonans w widoku Pomiar.',
  onlyOne: {
    place: (name) =>
      `Do porównania jest na razie tylko „${name}”. Dodaj miejsce w widoku Układ, wybierz je nad słupem i zaznacz tam rezonans.`,
    fork: (name) =>
      `Do porównania jest na razie tylko „${name}”. Dodaj kamerton w widoku Układ, wybierz go nad słupem i zaznacz z nim rezonans.`,
    ends: (name) =>
      `Do porównania jest na razie tylko „${name}”. Wybierz nad rysunkiem drugi rodzaj słupa i zaznacz w nim rezonans.`,
  },
  manyPairs: (groups) =>
    `Jest ich ${groups}, a to daje ${counted((groups * (groups - 1)) / 2, 'parę', 'pary', 'par')}. Wybierz, co porównać z pozostałymi.`,
  against: 'Porównaj z pozostałymi',
};

export const temperatures: LaterWords['temperatures'] = {
  heading: 'Zależność prędkości od temperatury',
  lead: 'Każdy punkt to jedno miejsce. Pas to prędkość przewidywana, od powietrza suchego do nasyconego parą wodną.',
  columns: { place: 'Miejsce', speed: 'Prędkość', theory: 'Różnica względem przewidywania' },
  noSpeed: '—',
  noTemperature: 'nie zanotowano temperatury',
};

export const ends: LaterWords['ends'] = {
  heading: 'Zależność poprawki na końcu rury od średnicy',
  lead: 'Każdy punkt to jedna rura. Każdą rurę zmierz w osobnym doświadczeniu; do poprawki na końcu rury potrzeba rezonansów dwóch rzędów.',
};

export const turned: LaterWords['turned'] = {
  heading: 'Na odwrót',
  lead: 'Te same znaczniki, ale niewiadomą jest inna wielkość.',
  fork: 'Znana prędkość, nieznany kamerton',
  temperature: 'Znany kamerton, nieznana temperatura',
  gas: 'Znany kamerton i znana temperatura, nieznany gaz',
  ends: 'Poprawka na końcu rury jako część średnicy',
  pending: '…',
};
