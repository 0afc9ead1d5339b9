import type { FirstWords } from '../catalogue.ts';

export const storageFault: FirstWords['storageFault'] = {
  elsewhere: 'W międzyczasie inna karta zapisała to doświadczenie.',
  full: 'Miejsce, które ta przeglądarka daje stronie, jest pełne. Usuń zapisany dźwięk (w widoku Archiwum) albo zwolnij miejsce i spróbuj ponownie.',
  closed: 'Przeglądarka zamknęła pamięć tej strony. Spróbuj ponownie.',
  gone: {
    'another tab': 'Inna karta zamknęła lub usunęła to, co ta strona zapisała.',
    'the browser': 'Przeglądarka zamknęła lub usunęła to, co ta strona zapisała.',
    'this tab': 'Ta karta zamknęła lub usunęła to, co ta strona zapisała.',
  },
  refused: 'Ta przeglądarka nie pozwala stronie nic zapisać: zabrania tego okno prywatne albo ustawienie.',
  newer: 'Zapisała tu nowsza wersja tej strony. Zamknij wszystkie jej karty i otwórz ją ponownie.',
  page: 'Zawiodła sama strona podczas zapisywania.',
  unknown: (said) => `Pamięć przeglądarki zawiodła (${said}).`,
};
