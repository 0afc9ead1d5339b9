import type { FirstWords } from '../../catalogue.ts';
import { plural } from '../grammar.ts';

export const source: FirstWords['source'] = {
  legend: 'Źródło dźwięku',
  names: { practice: 'Słup do ćwiczeń', microphone: 'Mikrofon', recording: 'Nagranie' },
  listen: 'Słuchaj',
  stop: 'Zatrzymaj',
  open: 'Otwórz nagranie',
  file: 'Nagranie do otwarcia',
  progress: 'Słuchanie nagrania',
  rate: (kilohertz, processing) => `${kilohertz}\u00a0kHz, ${processing}`,
  processing: {
    on: 'przeglądarka zmienia dźwięk',
    unknown: 'przeglądarka może zmieniać dźwięk',
    off: 'przeglądarka nie zmienia dźwięku',
  },
};

export const now: FirstWords['now'] = {
  legend: 'Mierzysz teraz',
  fork: 'Kamerton',
  hertz: (frequency) => `${frequency}\u00a0Hz`,
  addFork: 'Dodaj kamerton…',
  alsoChange: (marks) =>
    plural(
      marks,
      'Zmień też dotychczasowy znacznik',
      `Zmień też ${marks} dotychczasowe znaczniki`,
      `Zmień też ${marks} dotychczasowych znaczników`,
    ),
  column: 'Słup',
  place: 'Miejsce',
};

export const drawn: FirstWords['drawn'] = {
  wave: 'Fala',
  waveNamed: 'Rysowana fala',
  waves: { pressure: 'ciśnienie', displacement: 'wychylenie', none: 'brak' },
  expected: 'Oczekiwane długości',
};

export const readout: FirstWords['readout'] = {
  none: '–',
  unit: 'dB ponad hałas w sali',
  noneSpoken: 'Wzrost ponad hałas w sali: nie słychać tonu',
  levelSpoken: (riseDb) => `Wzrost ponad hałas w sali, w decybelach: ${riseDb}`,
  check: (sign, verdict) => `Ta długość: ${sign} ${verdict}`,
};

export const wayBack: FirstWords['wayBack'] = {
  idle: 'Powrót do rezonansu',
  here: 'Tutaj.',
  holdStill: 'Trzymaj nieruchomo i odczytaj linijkę.',
  atMaximum: 'W najgłośniejszym miejscu.',
  toGo: 'mm do celu',
  hereLarge: 'Tutaj',
  nothingToGo: 'odczytaj linijkę',
  moves: {
    piston: { tooLong: 'wsuń', tooShort: 'wysuń' },
    dipped: { tooLong: 'opuść rurę', tooShort: 'podnieś rurę' },
    filled: { tooLong: 'podnieś poziom wody', tooShort: 'obniż poziom wody' },
  },
  off: (side, move) => `${side}: ${move}`,
  heardAgo: (seconds) => `(${seconds}\u00a0s temu)`,
  lost: 'Nie wiadomo, gdzie jest rezonans. Przejdź przez niego jeszcze raz, potem wróć z obu stron.',
  byLevel: 'Powrót do najgłośniejszego miejsca: przejdź przez nie z obu stron.',
  tooShort: 'za krótki',
  tooLong: 'za długi',
  spoken: {
    here: 'Tutaj. Trzymaj nieruchomo.',
    atMaximum: 'W najgłośniejszym miejscu.',
    tooLong: (move) => `Za długi: ${move}.`,
    tooLongBy: (mm, move) => `Za długi o ${mm}\u00a0mm: ${move}.`,
    tooShort: (move) => `Za krótki: ${move}.`,
    tooShortBy: (mm, move) => `Za krótki o ${mm}\u00a0mm: ${move}.`,
    lost: 'Nie wiadomo, gdzie jest rezonans. Przejdź przez niego jeszcze raz.',
    close: 'Blisko najgłośniejszego miejsca.',
    away: 'Daleko od najgłośniejszego miejsca.',
  },
};

export const task: FirstWords['task'] = { task: 'Zadanie:' };
