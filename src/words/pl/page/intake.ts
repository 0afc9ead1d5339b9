import type { LaterWords } from '../../catalogue.ts';
import { megabytes } from '../../numbers.ts';
import { counted } from '../grammar.ts';

export const intakePage: LaterWords['intakePage'] = {
  heading: 'Co wczytano',
  files: 'Pliki',
  toClass: 'Dodaj do widoku Klasa',
  add: 'Dodaj do tego doświadczenia',
  openOne: 'Otwórz jako nowe doświadczenie',
  openEach: 'Otwórz każde jako doświadczenie',
  listen: 'Słuchaj nagrań',
  cancel: 'Anuluj',
  close: 'Zamknij bez zmian',
  tooMany: (files, most) =>
    `${counted(files, 'plik', 'pliki', 'plików')} naraz to za dużo: można najwyżej ${most}.`,
  tooLarge: (mostBytes) => `Te pliki mają razem więcej niż ${megabytes(mostBytes)}: otwórz je w częściach.`,
  opened: (title) =>
    `„${title}” jest otwarte. To, co było otwarte przedtem, jest na liście w widoku Archiwum albo o krok wstecz („Cofnij”).`,
  leftClosed: (files) => `Nie otwarto ${counted(files, 'pliku', 'plików', 'plików')}.`,
};

export const intakeContent: LaterWords['intakeContent'] = {
  experiment: (title, marks) =>
    `doświadczenie „${title}”, ${counted(marks, 'znacznik', 'znaczniki', 'znaczników')}`,
  table: (rows) => `tabela, ${counted(rows, 'wiersz', 'wiersze', 'wierszy')} ze znacznikami`,
  results: (results) => `tabela, ${counted(results, 'wynik', 'wyniki', 'wyników')}`,
  recording: 'nagranie',
  whole: (content) => `${content}.`,
  inPart: (content, faults) => `${content}; ${counted(faults, 'błąd', 'błędy', 'błędów')}.`,
  unusable: 'nie da się użyć.',
  ask: (content) => `Użyj tylko części bez błędów: ${content}`,
  inRow: (row, message) => `wiersz ${row}: ${message}`,
  inField: (field, message) => `${field}: ${message}`,
  inRowAndField: (row, field, message) => `wiersz ${row}, ${field}: ${message}`,
  more: (faults) => `i ${counted(faults, 'inny', 'inne', 'innych')}.`,
};

export const usableFiles: LaterWords['usableFiles'] = {
  all: (files) => `Można użyć wszystkich plików (${files}).`,
  some: (usable, files) => `Pliki, których można użyć: ${usable} z ${files}. To, co źle, jest na początku.`,
  inPart: (usable, files, inPart) =>
    `Pliki, których można użyć: ${usable} z ${files}, w tym częściowo: ${inPart}. To, co źle, jest na początku.`,
};

export const takenTable: LaterWords['takenTable'] = {
  opened: (title) =>
    `„${title}” jest otwarte jako nowe doświadczenie. To, co było otwarte przedtem, jest na liście w widoku Archiwum.`,
  added: (marks) => `Dodano ${counted(marks, 'znacznik', 'znaczniki', 'znaczników')}; „Cofnij” to wycofa.`,
  leftOut: (rows, why) => `Nie użyto ${counted(rows, 'wiersza', 'wierszy', 'wierszy')}: ${why}`,
  nothing: (why) => `Nie da się użyć żadnego wiersza tabeli. ${why}`,
  nothingOf: (title, why) => `Nie da się użyć żadnego wiersza z ${title}. ${why}`,
  unknownRow: (message) => `wiersz ?: ${message}`,
};
