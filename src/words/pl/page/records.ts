import type { LaterWords } from '../../catalogue.ts';
import { counted, plural } from '../grammar.ts';
import { fixed, megabytes } from '../../numbers.ts';

export const records: LaterWords['records'] = {
  bringIn: 'Wczytaj',
  bringInLead: 'Możesz też upuścić pliki gdziekolwiek na stronie albo wkleić tabelę poza polami.',
  toClass: { before: 'Pliki wielu grup: ', part: 'otwórz widok Klasa', after: '' },
  report: 'Sprawozdanie',
  reportLead:
    'Układ, metoda, znaczniki, wykresy, obliczenia, budżet, wynik i porównanie na kilku stronach, z miejscem na nazwiska i dyskusję.',
  openReport: 'Otwórz sprawozdanie',
};

export const experiments: LaterWords['experiments'] = {
  heading: 'Doświadczenia',
  newSame: 'Nowe, ten sam układ',
  newPlain: 'Nowe od zera',
  noList: (why) => `Nie można teraz odczytać listy: ${why}`,
  none: 'Nic jeszcze nie zapisano. Pierwsza zmiana utworzy pierwszy wpis.',
  deleted: (count) => `Usunięte doświadczenia (${count})`,
  newTitle: 'Nowy tytuł',
  leaveTitle: 'Anuluj',
  open: 'Otwórz',
  openNamed: (title) => `Otwórz ${title}`,
  rename: 'Zmień nazwę',
  renameNamed: (title) => `Zmień nazwę ${title}`,
  duplicate: 'Powiel',
  duplicateNamed: (title) => `Powiel ${title}`,
  delete: 'Usuń',
  deleteNamed: (title) => `Usuń ${title}`,
  bringBack: 'Przywróć',
  bringBackNamed: (title) => `Przywróć ${title}`,
  erase: 'Usuń na zawsze…',
  eraseNamed: (title) => `Usuń na zawsze ${title}`,
  askErase: (title) => ({
    heading: `Usunąć „${title}” na zawsze?`,
    message:
      'Znaczniki, przebiegi poziomu, notatki, kroki do cofnięcia i zapisany dźwięk zostaną usunięte z tej przeglądarki i nie wrócą.',
    no: 'Zachowaj',
    yes: 'Usuń',
  }),
  counts: (marks, places) =>
    `${counted(marks, 'znacznik', 'znaczniki', 'znaczników')}, ${counted(places, 'miejsce', 'miejsca', 'miejsc')}`,
  openNow: 'teraz otwarte',
  unreadable: 'Wpis, którego nie da się odczytać',
  saveUnreadable: 'Zapisz go bez zmian',
  noFile: 'Tego wpisu nie da się zapisać jako plik. Zostaje bez zmian.',
  notDone: (why) => `Nie udało się; nic nie zmieniono. ${why}`,
};

export const files: LaterWords['files'] = {
  heading: 'To doświadczenie',
  title: 'Tytuł',
  group: 'Grupa',
  className: 'Klasa',
  note: 'Notatka',
  saved:
    'Wszystko zapisuje się na tym urządzeniu podczas pracy. Dźwięk i znaczniki nigdy same go nie opuszczają.',
  notSaved: (why) => `Nie zapisano na tym urządzeniu (${why}). Zapisz plik JSON, zanim zamkniesz stronę.`,
  save: 'Zapisz wszystko jako JSON',
  form: {
    before: 'Plik JSON zawiera wszystko; jego budowę opisuje ',
    part: 'schemat JSON',
    after: '.',
  },
};

export const tables: LaterWords['tables'] = {
  heading: 'Tabele',
  form: 'CSV dla arkusza, który czyta',
  forms: {
    point: '15.8 (przecinek między komórkami)',
    comma: '15,8 (średnik między komórkami)',
  },
  lead: 'Dla arkuszy i dokumentów, ze wszystkimi cyframi i jednostkami w nagłówkach. Od długości odjęto już przesunięcie zera linijki.',
  csv: 'CSV',
  copy: 'Kopiuj',
  copied: (name, rows) =>
    `${name}: skopiowano ${counted(rows, 'wiersz', 'wiersze', 'wierszy')}, można wkleić.`,
};

export const tableKinds: LaterWords['tableKinds'] = {
  marks: {
    name: 'Znaczniki',
    save: 'Zapisz jako CSV: Znaczniki',
    copy: 'Kopiuj jako tabelę: Znaczniki',
  },
  fit: {
    name: 'Dopasowanie, znacznik po znaczniku',
    save: 'Zapisz jako CSV: Dopasowanie, znacznik po znaczniku',
    copy: 'Kopiuj jako tabelę: Dopasowanie, znacznik po znaczniku',
  },
  result: {
    name: 'Wynik',
    save: 'Zapisz jako CSV: Wynik',
    copy: 'Kopiuj jako tabelę: Wynik',
  },
  budget: {
    name: 'Budżet niepewności',
    save: 'Zapisz jako CSV: Budżet niepewności',
    copy: 'Kopiuj jako tabelę: Budżet niepewności',
  },
  trace: {
    name: 'Przebieg poziomu wokół znaczników',
    save: 'Zapisz jako CSV: Przebieg poziomu wokół znaczników',
    copy: 'Kopiuj jako tabelę: Przebieg poziomu wokół znaczników',
  },
};

export const sounds: LaterWords['sounds'] = {
  heading: 'Zapisany dźwięk',
  keep: 'Od teraz zapisuj dźwięk każdego uderzenia',
  lead: (usedBytes, limitBytes) =>
    `Wyłączone po każdym otwarciu strony, bo nagrywają się też głosy w sali. Dźwięk zostaje na tym urządzeniu. Wszystkie doświadczenia zajmują razem ${megabytes(usedBytes)} (limit: ${megabytes(limitBytes)}).`,
  again:
    '„Posłuchaj ponownie” analizuje dźwięk z wybranym teraz kamertonem i zastępuje znalezione w nim znaczniki. „Cofnij” przywraca stare.',
  marks: (count, numbers) => `${plural(count, 'znacznik', 'znaczniki', 'znaczniki')} ${numbers}`,
  save: 'Zapisz jako WAV',
  saveNamed: (number) => `Zapisz dźwięk ${number} jako WAV`,
  listen: 'Posłuchaj ponownie',
  listenNamed: (number) => `Posłuchaj ponownie dźwięku ${number}`,
  erase: 'Usuń…',
  eraseNamed: (number) => `Usuń dźwięk ${number}`,
  askErase: (number, lengthS) => ({
    heading: `Usunąć dźwięk ${number}?`,
    message: `${fixed(lengthS, 1)}\u00a0s dźwięku zostanie usunięte z tej przeglądarki i nie wróci. Znaczniki zostają. Zapisz go najpierw jako WAV, jeśli jest jeszcze potrzebny.`,
    no: 'Zachowaj',
    yes: 'Usuń',
  }),
  notRead: (why) => `Nie można odczytać tego dźwięku: ${why}`,
  notErased: (why) => `Nie można usunąć tego dźwięku: ${why}`,
};

export const stored: LaterWords['stored'] = {
  heading: 'Zapisane na tym urządzeniu',
  lead: 'Doświadczenia ze znacznikami, przebiegami poziomu, notatkami i krokami do cofnięcia; dźwięk tylko na twoje życzenie; twoje ustawienia; wpisane, ale jeszcze niezatwierdzone dane; oraz kopia tej strony, żeby działała bez sieci. Wszystko zostaje w tej przeglądarce: nic nie jest wysyłane.',
  inAll: (bytes) => `Razem ${megabytes(bytes)} według przeglądarki.`,
  promised: 'Przeglądarka obiecała przechować wszystko, aż to usuniesz.',
  notPromised: 'Przeglądarka może to usunąć, gdy zabraknie miejsca lub gdy strona długo nie będzie używana.',
  askToKeep: 'Poproś przeglądarkę o przechowanie',
  kept: 'Przeglądarka przechowa twoje doświadczenia, aż je usuniesz.',
  notKept:
    'Przeglądarka nie zgodziła się przechować twoich danych. Zapisz w plikach to, co ważne; zainstalowanie tej strony może pomóc.',
  erase: 'Usuń wszystko…',
  askErase: {
    heading: 'Usunąć wszystko, co tu zapisano?',
    message:
      'Wszystkie doświadczenia, także usunięte, i cały zapisany dźwięk zostaną usunięte z tej przeglądarki i nie wrócą. Zapisz najpierw w plikach to, co jeszcze potrzebne.',
    no: 'Zachowaj wszystko',
    yes: 'Usuń wszystko',
  },
  notErased: (why) => `Nie wszystko udało się usunąć: ${why}`,
  older:
    'Inna kopia tej strony w tej samej witrynie zapisała w tej przeglądarce starsze doświadczenia. Otwórz tamtą kopię, żeby je zobaczyć.',
  olderAt: (path) => ({
    before: 'Inna kopia tej strony w tej samej witrynie zapisała w tej przeglądarce starsze doświadczenia: ',
    part: `otwórz ${path}`,
    after: '',
  }),
};
