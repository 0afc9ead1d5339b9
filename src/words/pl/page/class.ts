import type { LaterWords } from '../../catalogue.ts';
import { counted } from '../grammar.ts';

export const classPage: LaterWords['classPage'] = {
  heading: 'Klasa',
  lead: 'Upuść tu pliki grup (JSON lub CSV, ile chcesz) albo wklej tabelę: znaczników z kolumną group albo wyników z kolumnami group, speed_mps i standard_uncertainty_mps. Możesz też odczytać kody z ekranów grup. Wszystko zostaje na tym urządzeniu, dopóki nie opróżnisz widoku Klasa. Nic nie jest wysyłane.',
  back: 'Wróć do archiwum',
  print: 'Drukuj zestawienie',
  saveCsv: 'Zapisz klasę jako CSV',
  saveJson: 'Zapisz klasę jako JSON',
  copy: 'Kopiuj tabelę',
  copied: 'Skopiowano tabelę klasy, można wkleić.',
  empty: 'Opróżnij widok Klasa',
  discuss: 'Do dyskusji',
  groups: 'Grupy',
  table: 'Tabela grup',
  use: 'Liczy się',
  group: 'Grupa',
  speed: 'm/s (95\u00a0%)',
  marks: 'Znaczniki',
  remarks: 'Uwagi',
  groupInFile: (name, fileName) => `${name}, ${fileName}`,
  count: (group) => `Liczy się: ${group}`,
};

export const codeTaken: LaterWords['codeTaken'] = {
  notACode: 'W tym kodzie nie ma wyniku grupy.',
  part: (have, of) => `Odczytane kody tej grupy: ${have} z ${of}. Pokaż następny.`,
  new: (group) => `Dodano: „${group}”.`,
  there: (group) => `Już tu jest, bez zmian: „${group}”.`,
  newer: (group) => `Już tu jest: „${group}”. Ta wersja jest nowsza i liczy się zamiast tamtej.`,
  older: (group) => `Już tu jest: „${group}”. Ta wersja nie jest nowsza i się nie liczy.`,
  inTable: (rows) => `Tabela grup ma ${counted(rows, 'wiersz', 'wiersze', 'wierszy')}.`,
};

export const camera: LaterWords['camera'] = {
  start: 'Odczytaj kody kamerą',
  stop: 'Wyłącz kamerę',
  lead: 'Trzymaj kod grupy przed kamerą. Obrazy nie są zapisywane.',
  none: 'Ta przeglądarka nie udostępnia stronie kamery. Odczytaj kod telefonem lub tabletem albo otwórz tu link grupy.',
  refused: 'Ta strona nie może użyć kamery. Zezwól na nią obok adresu albo otwórz tu link grupy.',
  busy: 'Kamera się nie włącza. Może używa jej inny program.',
  picture: 'Co widzi kamera',
};
