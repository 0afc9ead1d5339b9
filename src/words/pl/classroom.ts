import type { LaterWords } from '../catalogue.ts';
import { counted, plural } from './grammar.ts';

export const classResult: LaterWords['classResult'] = {
  none: 'Żadna grupa nie ma jeszcze wyniku.',
  counted: (groups, all) => `Liczy się wynik ${groups} z ${counted(all, 'grupy', 'grup', 'grup')}.`,
  others: 'Pozostałe są w tabeli razem z przyczyną.',
  interval:
    'W 95 na 100 takich klas prędkość prawdziwa leży w granicach ±, jeśli grupy nie mają wspólnego błędu.',
  spread: (mps) =>
    `Wyniki grup różnią się bardziej, niż tłumaczą ich własne niepewności: o dodatkowe ${mps}\u00a0m/s (odchylenie standardowe). Pojedyncza grupa takich błędów nie zauważy.`,
  noSpread: 'Grupy nie różnią się bardziej, niż tłumaczą ich własne niepewności.',
  noAir: 'Żadna grupa nie zanotowała temperatury: prędkości liczą się bez przeliczania.',
  referred: (celsius) =>
    `Wszystkie prędkości przeliczono na ${celsius}\u00a0°C według wzoru na prędkość dźwięku w powietrzu.`,
  withoutAir: (groups) =>
    plural(
      groups,
      `${groups} grupa nie zanotowała temperatury: jej prędkość liczy się bez przeliczania.`,
      `${groups} grupy nie zanotowały temperatury: ich prędkości liczą się bez przeliczania.`,
      `${groups} grup nie zanotowało temperatury: ich prędkości liczą się bez przeliczania.`,
    ),
  theory: (mps, difference) =>
    `Prędkość przewidywana dla tego powietrza to ${mps}\u00a0m/s. Wynik klasy minus przewidywana: ${difference}\u00a0m/s.`,
  shared:
    'Błędy wspólne dla wszystkich grup, na przykład przez jednakowe linijki, nie uśredniają się i nie ma ich w tej niepewności.',
  method: 'Metoda: średnia w modelu efektów losowych (Paule & Mandel 1982); przedział: Hartung & Knapp 2001.',
};

export const classGroup: LaterWords['classGroup'] = {
  row: (number) => `Wiersz ${number}`,
  mark: (number) => `Znacznik ${number}`,
  markCause: (mark, cause) => `${mark}: ${cause}`,
  noResult: 'Brak wyniku.',
  outlier: (difference) =>
    `Wynik odstający, nie liczy się; różnica względem wyniku klasy: ${difference}\u00a0m/s.`,
  noReason: 'Nie ma przy nim znaczników, które mogłyby pokazać dlaczego.',
  held: 'Nie liczy się, dopóki tego nie sprawdzisz. Zaznacz, żeby liczył się bez zmian.',
  longColumn: (metres) =>
    `Słup o długości ${metres}\u00a0m jest dłuższy niż rury w szkołach. Czy zamiast centymetrów wpisano milimetry?`,
  resultAlone: 'Wynik bez znaczników.',
  noAir: 'Nie zanotowano temperatury: prędkość liczy się bez przeliczania.',
  unnamed: (table, row) => `${table}, wiersz ${row}`,
};

export const sameGroup: LaterWords['sameGroup'] = {
  'same marks': (group) => `Te same znaczniki co „${group}”.`,
  'earlier state of the same experiment': (group) => `Wcześniejsza wersja „${group}”.`,
  'same group again': (group) => `Ta sama grupa co „${group}”.`,
};

export const classDiscussion: LaterWords['classDiscussion'] = {
  spread: 'Wyniki grup różnią się bardziej, niż pozwalają ich niepewności. O czym nikt nie pomyślał?',
  agree: 'Grupy zgadzają się w granicach niepewności. Jaki błąd mogły popełnić wszystkie razem?',
  apart: (groups) =>
    `Te wyniki odstają: ${groups}. Każdy może się z nich czegoś nauczyć: co w układzie dałoby dokładnie taką różnicę?`,
  others: (count) => counted(count, 'inna', 'inne', 'innych'),
  temperatures: (coldest, warmest) =>
    `Powietrze miało od ${coldest} do ${warmest}\u00a0°C. Ile m/s na jeden stopień odczytujecie z wykresu prędkości i temperatury i czy niepewności grup są dość małe, żeby to zobaczyć?`,
  moreGroups: 'Jak zmieniłyby się średnia i jej niepewność, gdyby mierzyło dwa razy więcej grup?',
};

export const spreadPicture: LaterWords['spreadPicture'] = {
  title: 'Rozrzut w klasie',
  heading: 'Prędkość dźwięku, grupa po grupie',
  axis: 'prędkość dźwięku, m/s (kreski: 95\u00a0%)',
  shows: (groups, mps, uncertainty) =>
    `${counted(groups, 'grupa', 'grupy', 'grup')}, od najmniejszej do największej prędkości, z przedziałami 95\u00a0%. Pas to wynik klasy, ${mps} ± ${uncertainty}\u00a0m/s. Puste punkty się nie liczą.`,
  outliers: (count) =>
    plural(
      count,
      'Krzyżyk to wynik odstający.',
      `${count} krzyżyki to wyniki odstające.`,
      `${count} krzyżyków to wyniki odstające.`,
    ),
  beyond: 'To, co leży poza brzegiem, narysowano na brzegu.',
};
