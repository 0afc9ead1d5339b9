import type { LaterWords } from '../../catalogue.ts';
import { counted, plural } from '../grammar.ts';
import { fixed, megabytes } from '../../numbers.ts';

export const records: LaterWords['records'] = {
  bringIn: 'Öffnen und einfügen',
  bringInLead:
    'Du kannst auch Dateien irgendwo auf die Seite ziehen oder eine Tabelle außerhalb der Felder einfügen.',
  toClass: { before: 'Dateien vieler Gruppen: ', part: 'Klasse öffnen', after: '' },
  report: 'Protokoll',
  reportLead:
    'Aufbau, Durchführung, Marken, Diagramme, Rechnung, Budget, Ergebnis und Vergleich auf wenigen Seiten, mit Platz für Namen und Diskussion.',
  openReport: 'Protokoll öffnen',
};

export const experiments: LaterWords['experiments'] = {
  heading: 'Experimente',
  newSame: 'Neu, gleicher Aufbau',
  newPlain: 'Ganz neu',
  noList: (why) => `Die Liste lässt sich gerade nicht lesen: ${why}`,
  none: 'Noch ist nichts gespeichert. Die erste Änderung ergibt den ersten Eintrag.',
  deleted: (count) => `Gelöschte Experimente (${count})`,
  newTitle: 'Neuer Titel',
  leaveTitle: 'Abbrechen',
  open: 'Öffnen',
  openNamed: (title) => `${title} öffnen`,
  rename: 'Umbenennen',
  renameNamed: (title) => `${title} umbenennen`,
  duplicate: 'Kopieren',
  duplicateNamed: (title) => `${title} kopieren`,
  delete: 'Löschen',
  deleteNamed: (title) => `${title} löschen`,
  bringBack: 'Zurückholen',
  bringBackNamed: (title) => `${title} zurückholen`,
  erase: 'Endgültig löschen…',
  eraseNamed: (title) => `${title} endgültig löschen`,
  askErase: (title) => ({
    heading: `„${title}“ endgültig löschen?`,
    message:
      'Marken, Pegelverläufe, Notizen, Schritte zum Rückgängigmachen und gespeicherter Ton werden aus diesem Browser gelöscht und kommen nicht wieder.',
    no: 'Behalten',
    yes: 'Endgültig löschen',
  }),
  counts: (marks, places) => `${counted(marks, 'Marke', 'Marken')}, ${counted(places, 'Ort', 'Orte')}`,
  openNow: 'jetzt offen',
  unreadable: 'Ein Eintrag, der sich nicht lesen lässt',
  saveUnreadable: 'Unverändert speichern',
  noFile: 'Dieser Eintrag lässt sich nicht als Datei speichern. Er bleibt, wie er ist.',
  notDone: (why) => `Das ging nicht; nichts wurde geändert. ${why}`,
};

export const files: LaterWords['files'] = {
  heading: 'Dieses Experiment',
  title: 'Titel',
  group: 'Gruppe',
  className: 'Klasse',
  note: 'Notiz',
  saved: 'Wird beim Arbeiten auf diesem Gerät gespeichert. Ton und Marken verlassen es nie von selbst.',
  notSaved: (why) => `Nicht auf diesem Gerät gespeichert (${why}). Speichere die JSON-Datei, bevor du gehst.`,
  save: 'Alles als JSON speichern',
  form: {
    before: 'Die JSON-Datei enthält alles; ihr Aufbau steht in einem ',
    part: 'JSON-Schema',
    after: '.',
  },
};

export const tables: LaterWords['tables'] = {
  heading: 'Tabellen',
  form: 'CSV für eine Tabellenkalkulation mit',
  forms: { point: '15.8 (Komma zwischen Zellen)', comma: '15,8 (Semikolon zwischen Zellen)' },
  lead: 'Für Tabellenkalkulationen und Dokumente, mit allen Ziffern und den Einheiten in den Überschriften. Von den Längen ist die Nullpunktverschiebung des Maßstabs schon abgezogen.',
  csv: 'CSV',
  copy: 'Kopieren',
  copied: (name, rows) => `${name}: ${counted(rows, 'Zeile', 'Zeilen')} kopiert, bereit zum Einfügen.`,
};

export const tableKinds: LaterWords['tableKinds'] = {
  marks: { name: 'Marken', save: 'Marken als CSV speichern', copy: 'Marken als Tabelle kopieren' },
  fit: {
    name: 'Ausgleich, Marke für Marke',
    save: 'Ausgleich, Marke für Marke als CSV speichern',
    copy: 'Ausgleich, Marke für Marke als Tabelle kopieren',
  },
  result: {
    name: 'Ergebnis',
    save: 'Ergebnis als CSV speichern',
    copy: 'Ergebnis als Tabelle kopieren',
  },
  budget: {
    name: 'Unsicherheitsbudget',
    save: 'Unsicherheitsbudget als CSV speichern',
    copy: 'Unsicherheitsbudget als Tabelle kopieren',
  },
  trace: {
    name: 'Pegelverlauf um die Marken',
    save: 'Pegelverlauf um die Marken als CSV speichern',
    copy: 'Pegelverlauf um die Marken als Tabelle kopieren',
  },
};

export const sounds: LaterWords['sounds'] = {
  heading: 'Gespeicherter Ton',
  keep: 'Ab jetzt den Ton jedes Anschlags speichern',
  lead: (usedBytes, limitBytes) =>
    `Nach jedem Öffnen der Seite ist das ausgeschaltet, weil auch Stimmen im Raum aufgenommen werden. Der Ton bleibt auf diesem Gerät. Alle Experimente belegen ${megabytes(usedBytes)} von ${megabytes(limitBytes)}.`,
  again:
    '„Noch einmal anhören“ wertet einen Ton mit der jetzt gewählten Gabel aus und ersetzt die darin gefundenen Marken. „Rückgängig“ bringt die alten zurück.',
  marks: (count, numbers) => `${plural(count, 'Marke', 'Marken')} ${numbers}`,
  save: 'Als WAV speichern',
  saveNamed: (number) => `Ton ${number} als WAV speichern`,
  listen: 'Noch einmal anhören',
  listenNamed: (number) => `Ton ${number} noch einmal anhören`,
  erase: 'Löschen…',
  eraseNamed: (number) => `Ton ${number} löschen`,
  askErase: (number, lengthS) => ({
    heading: `Ton ${number} löschen?`,
    message: `${fixed(lengthS, 1)}\u00a0s Ton werden aus diesem Browser gelöscht und kommen nicht wieder. Die Marken bleiben. Speichere ihn vorher als WAV, wenn du ihn noch brauchst.`,
    no: 'Behalten',
    yes: 'Löschen',
  }),
  notRead: (why) => `Dieser Ton lässt sich nicht lesen: ${why}`,
  notErased: (why) => `Dieser Ton lässt sich nicht löschen: ${why}`,
};

export const stored: LaterWords['stored'] = {
  heading: 'Auf diesem Gerät gespeichert',
  lead: 'Experimente mit Marken, Pegelverläufen, Notizen und Schritten zum Rückgängigmachen; Ton nur, wo du es wolltest; deine Einstellungen; was du getippt und noch nicht übernommen hast; und eine Kopie dieser Seite, damit sie ohne Netz läuft. Alles bleibt in diesem Browser: Nichts wird gesendet.',
  inAll: (bytes) => `Zusammen ${megabytes(bytes)}, so zählt es der Browser.`,
  promised: 'Der Browser hat zugesagt, alles zu behalten, bis du es löschst.',
  notPromised:
    'Der Browser kann alles löschen, wenn der Platz knapp wird oder diese Seite lange nicht benutzt wird.',
  askToKeep: 'Browser bitten, alles zu behalten',
  kept: 'Der Browser behält deine Experimente, bis du sie löschst.',
  notKept:
    'Der Browser hat nicht zugesagt, deine Daten zu behalten. Speichere Wichtiges als Datei; diese Seite zu installieren kann helfen.',
  erase: 'Alles löschen…',
  askErase: {
    heading: 'Alles löschen, was hier gespeichert ist?',
    message:
      'Alle Experimente, auch die gelöschten, und der ganze gespeicherte Ton werden aus diesem Browser gelöscht und kommen nicht wieder. Speichere vorher als Datei, was du noch brauchst.',
    no: 'Alles behalten',
    yes: 'Alles löschen',
  },
  notErased: (why) => `Nicht alles ließ sich löschen: ${why}`,
  older:
    'Eine andere Kopie dieser Seite hat unter derselben Adresse ältere Experimente in diesem Browser gespeichert. Öffne jene Kopie, um sie zu sehen.',
  olderAt: (path) => ({
    before:
      'Eine andere Kopie dieser Seite hat unter derselben Adresse ältere Experimente in diesem Browser gespeichert: ',
    part: `${path} öffnen`,
    after: '',
  }),
};
