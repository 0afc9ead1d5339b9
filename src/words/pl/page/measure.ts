import type { FirstWords } from '../../catalogue.ts';
import { ordinal, plural } from '../grammar.ts';

export const marks: FirstWords['marks'] = {
  heading: 'Znaczniki',
  undo: (step) => (step === null ? 'Cofnij' : `Cofnij: ${step}`),
  redo: 'Ponów',
  newMark: 'Nowy znacznik',
  newLength: 'Długość nowego znacznika',
  add: 'Dodaj znacznik',
  waiting: (count) =>
    plural(
      count,
      '1 znacznik czeka na długość. Wpisz ją i naciśnij Enter.',
      `${count} znaczniki czekają na długość. Wpisz jedną i naciśnij Enter, żeby przejść do następnego.`,
      `${count} znaczników czeka na długość. Wpisz jedną i naciśnij Enter, żeby przejść do następnego.`,
    ),
  none: 'Nie ma jeszcze znaczników. Powstają przy każdym znalezionym rezonansie. Możesz też nacisnąć M albo wpisać długość nad rurą.',
  deleted: (count) => `Usunięte znaczniki (${count})`,
  bringBack: 'Przywróć',
  atLength: (centimetres) => `przy ${centimetres}\u00a0cm`,
  bringBackAtLength: (centimetres) => `Przywróć znacznik przy ${centimetres}\u00a0cm`,
  withoutLength: 'bez długości',
  bringBackWithoutLength: 'Przywróć znacznik bez długości',
};

export const markRow: FirstWords['markRow'] = {
  mark: (number) => `Znacznik ${number}`,
  length: (number) => `Długość znacznika ${number}`,
  waits: 'wpisz jego długość',
  overTube: 'Wpisz ją nad rurą',
  choose: 'Zmień',
  chooseNamed: (number) => `Zmień znacznik ${number}`,
  fork: (number) => `Kamerton znacznika ${number}`,
  column: (number) => `Słup znacznika ${number}`,
  place: (number) => `Miejsce znacznika ${number}`,
  alsoChange: (count) =>
    plural(
      count,
      'Zmień też drugi znacznik tego rodzaju',
      `Zmień też ${count} pozostałe znaczniki tego rodzaju`,
      `Zmień też ${count} pozostałych znaczników tego rodzaju`,
    ),
  unsure: (percent) =>
    `Pewność, że to rezonans, wynosi tylko ${percent}\u00a0%: przejdź przez niego jeszcze raz, zanim mu zaufasz.`,
  pass: (strike, pass) => `uderzenie ${strike}, ${ordinal(pass)} przejście`,
  untested: (missing) =>
    missing === 1 ? 'sprawdziłby go jeszcze jeden rezonans' : 'sprawdziłyby go jeszcze dwa rezonanse',
  notSolved: 'jeszcze nie obliczono',
  leftOut: 'pominięty',
  outlier: (cause) => `Wartość odstająca: ${cause}`,
  order: (number) => `Rząd znacznika ${number}`,
  autoOrder: 'rząd: auto',
  ordinal: (order) => `rząd ${order}`,
  locatedBy: (number) => `Jak znaleziono długość znacznika ${number}`,
  atCentre: 'w środku rezonansu',
  atLoudest: 'w najgłośniejszym miejscu',
  leaveOut: 'Pomiń',
  leaveOutNamed: (number) => `Pomiń znacznik ${number} w dopasowaniu`,
  delete: 'Usuń',
  deleteNamed: (number) => `Usuń znacznik ${number}`,
  again: (evidence) => `Ponownie: ${evidence}`,
  separate: 'Rozdziel',
  separateNamed: (number) => `Oddziel powtórzenie od znacznika ${number}`,
  sameAsOther: 'Ten sam co…',
  sameAsNamed: (number) => `Znacznik tego samego rezonansu co znacznik ${number}`,
  same: (number) => `Ten sam co ${number}`,
  sameNamed: (number, other) => `Znacznik ${number} to ten sam rezonans co znacznik ${other}`,
};

export const result: FirstWords['result'] = {
  region: 'Prędkość dźwięku',
  heading: 'Szczegóły wyniku',
  spoken: (speed) => `Prędkość dźwięku: ${speed}.`,
  none: '—',
  unit: 'm/s',
};

export const doubts: FirstWords['doubts'] = { heading: 'Ostrzeżenia' };
