import type { LaterWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const tableFault: LaterWords['tableFault'] = {
  cell: (number) => `komórka ${number}`,
  noText: 'To nie jest plik tekstowy. Zapisz tabelę jako CSV, nie w formacie arkusza.',
  noContent: 'Plik jest pusty.',
  noHeading: 'Plik nie ma wiersza nagłówków.',
  noRows: 'Plik ma wiersz nagłówków, ale żadnych wierszy ze znacznikami.',
  allExcluded: 'Wszystkie wiersze ze znacznikami są pominięte (excluded).',
  columnTwice: 'ta kolumna występuje więcej niż raz. Usuń jedną albo zmień jej nazwę.',
  quotes: {
    unclosed: 'cudzysłów (") jest otwarty i nigdzie niezamknięty. Zamknij go albo usuń.',
    'text-behind':
      'po cudzysłowie zamykającym (") jest jeszcze tekst. Przenieś go do środka albo usuń cudzysłowy.',
    stray: 'w komórce jest pojedynczy cudzysłów ("). Usuń go.',
  },
  manyRows: (rows, most) =>
    `Plik ma ${counted(rows, 'wiersz', 'wiersze', 'wierszy')}; może mieć najwyżej ${most}. Podziel go na kilka plików.`,
  manyCells: (cells, headings) =>
    `${counted(cells, 'komórka', 'komórki', 'komórek')}, a nagłówków: ${headings}.`,
  decimalCommas: 'Przy przecinkach dziesiętnych wstaw średniki między komórki albo weź komórki w cudzysłów.',
  noneOf: (needed, found) => `w nagłówku nie ma żadnej z kolumn ${needed}. Jest tam: ${found}.`,
  putDelimiters:
    'Wstaw między komórki przecinki, średniki lub tabulatory i nie pisz tytułu nad nagłówkiem (albo zacznij go od #).',
  putHeading: 'Dodaj na górze wiersz nagłówków.',
  missing: (found, needed) => `brakuje tej kolumny. W nagłówku jest: ${found}. Potrzebne są: ${needed}.`,
  severalMissing: (found, needed) =>
    `brakuje tych kolumn. W nagłówku jest: ${found}. Potrzebne są: ${needed}.`,
  meant: (heading, column) => `Jeśli chodzi o „${heading}”, nazwij ją ${column}.`,
  plainLengths:
    'Długości bez jednostki są w cm; komórka może mieć własną jednostkę, na przykład 158\u00a0mm.',
};
