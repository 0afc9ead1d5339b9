import type { FirstWords } from '../../catalogue.ts';

export const keepingBar: FirstWords['keepingBar'] = {
  elsewhere: 'To doświadczenie jest otwarte w innej karcie. Ta karta tylko je pokazuje i podąża za tamtą.',
  workHere: 'Pracuj nad nim tutaj',
  openCopy: 'Otwórz kopię',
  apart: 'To doświadczenie zmieniono w innej karcie. Zmiany zrobione tutaj nie zostaną zapisane.',
  goOn: 'Pracuj dalej na kopii',
  useOther: 'Użyj tego, co zapisała tamta',
  refused: (why) =>
    `Twoja praca jest tylko w tej karcie: ${why} Możesz pracować dalej. Zanim wyjdziesz, zapisz plik.`,
  save: 'Zapisz plik',
  tryAgain: 'Spróbuj ponownie',
  sound: (used, limit) => ({
    before: '',
    part: '● Zapisuje się dźwięk',
    after: `, gdy strona słucha: ${used} (limit: ${limit})`,
  }),
  stopSaving: 'Nie zapisuj dźwięku',
  newer: 'Jest nowsza wersja tej strony. Zaktualizuj, kiedy chcesz; twoje pomiary są zapisane.',
  newerBusy: 'Jest nowsza wersja tej strony. Najpierw zamknij jej pozostałe karty: używają jeszcze starej.',
  useNewer: 'Zaktualizuj teraz',
};
