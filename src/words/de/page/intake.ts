import type { LaterWords } from '../../catalogue.ts';
import { megabytes } from '../../numbers.ts';
import { counted } from '../grammar.ts';

export const intakePage: LaterWords['intakePage'] = {
  heading: 'Eingelesen',
  files: 'Dateien',
  toClass: 'In die Klasse übernehmen',
  add: 'Zu diesem Experiment hinzufügen',
  openOne: 'Als neues Experiment öffnen',
  openEach: 'Jedes als Experiment öffnen',
  listen: 'Aufnahmen anhören',
  cancel: 'Abbrechen',
  close: 'Schließen, ohne etwas zu ändern',
  tooMany: (files, most) => `${files} Dateien auf einmal sind zu viele: ${most} sind möglich.`,
  tooLarge: (mostBytes) =>
    `Diese Dateien haben zusammen mehr als ${megabytes(mostBytes)}: Öffne sie in Teilen.`,
  opened: (title) =>
    `„${title}“ ist offen. Was vorher offen war, steht in der Liste unter Ablage, oder einen Schritt zurück mit „Rückgängig“.`,
  leftClosed: (files) => `${files} Dateien wurden nicht geöffnet.`,
};

export const intakeContent: LaterWords['intakeContent'] = {
  experiment: (title, marks) => `Experiment „${title}“, ${counted(marks, 'Marke', 'Marken')}`,
  table: (rows) => `Tabelle, ${counted(rows, 'Zeile', 'Zeilen')} mit Marken`,
  results: (results) => `Tabelle, ${counted(results, 'Ergebnis', 'Ergebnisse')}`,
  recording: 'Aufnahme',
  whole: (content) => `${content}.`,
  inPart: (content, faults) => `${content}; ${faults} Fehler.`,
  unusable: 'nicht brauchbar.',
  ask: (content) => `Nur den fehlerfreien Teil verwenden: ${content}`,
  inRow: (row, message) => `Zeile ${row}: ${message}`,
  inField: (field, message) => `${field}: ${message}`,
  inRowAndField: (row, field, message) => `Zeile ${row}, ${field}: ${message}`,
  more: (faults) => `und ${faults} weitere.`,
};

export const usableFiles: LaterWords['usableFiles'] = {
  all: (files) => `Alle ${files} Dateien sind brauchbar.`,
  some: (usable, files) => `${usable} von ${files} Dateien sind brauchbar. Was nicht stimmt, kommt zuerst.`,
  inPart: (usable, files, inPart) =>
    `${usable} von ${files} Dateien sind brauchbar, davon ${inPart} zum Teil. Was nicht stimmt, kommt zuerst.`,
};

export const takenTable: LaterWords['takenTable'] = {
  opened: (title) =>
    `„${title}“ ist als neues Experiment offen. Was vorher offen war, steht in der Liste unter Ablage.`,
  added: (marks) => `${counted(marks, 'Marke', 'Marken')} hinzugefügt; „Rückgängig“ nimmt das zurück.`,
  leftOut: (rows, why) => `${counted(rows, 'Zeile wurde', 'Zeilen wurden')} weggelassen: ${why}`,
  nothing: (why) => `Keine Zeile der Tabelle war brauchbar. ${why}`,
  nothingOf: (title, why) => `Keine Zeile von ${title} war brauchbar. ${why}`,
  unknownRow: (message) => `Zeile ?: ${message}`,
};
