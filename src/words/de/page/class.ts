import type { LaterWords } from '../../catalogue.ts';
import { counted } from '../grammar.ts';

export const classPage: LaterWords['classPage'] = {
  heading: 'Klasse',
  lead: 'Zieh die Dateien der Gruppen hierher (JSON oder CSV, beliebig viele) oder füge eine Tabelle ein: mit Marken und einer Spalte group, oder mit Ergebnissen und den Spalten group, speed_mps und standard_uncertainty_mps. Oder lies die Codes von den Bildschirmen der Gruppen. Alles bleibt auf diesem Gerät, bis du die Klasse leerst. Nichts wird gesendet.',
  back: 'Zurück zur Ablage',
  print: 'Übersicht drucken',
  saveCsv: 'Klasse als CSV speichern',
  saveJson: 'Klasse als JSON speichern',
  copy: 'Tabelle kopieren',
  copied: 'Die Tabelle der Klasse ist kopiert, bereit zum Einfügen.',
  empty: 'Klasse leeren',
  discuss: 'Zum Besprechen',
  groups: 'Gruppen',
  table: 'Tabelle der Gruppen',
  use: 'Zählt',
  group: 'Gruppe',
  speed: 'm/s (95\u00a0%)',
  marks: 'Marken',
  remarks: 'Bemerkungen',
  groupInFile: (name, fileName) => `${name}, ${fileName}`,
  count: (group) => `${group} mitzählen`,
};

export const codeTaken: LaterWords['codeTaken'] = {
  notACode: 'Dieser Code enthält kein Ergebnis einer Gruppe.',
  part: (have, of) => `${have} von ${of} Codes dieser Gruppe gelesen. Zeig den nächsten.`,
  new: (group) => `Hinzugefügt: „${group}“.`,
  there: (group) => `Schon da, unverändert: „${group}“.`,
  newer: (group) => `Schon da: „${group}“. Diese Fassung ist neuer und zählt stattdessen.`,
  older: (group) => `Schon da: „${group}“. Diese Fassung ist nicht neuer und zählt nicht.`,
  inTable: (rows) => `Die Tabelle der Gruppen hat ${counted(rows, 'Zeile', 'Zeilen')}.`,
};

export const camera: LaterWords['camera'] = {
  start: 'Codes mit der Kamera lesen',
  stop: 'Kamera stoppen',
  lead: 'Halte den Code einer Gruppe vor die Kamera. Die Bilder werden nicht gespeichert.',
  none: 'Dieser Browser gibt der Seite keine Kamera. Lies den Code mit einem Handy oder Tablet, oder öffne den Link der Gruppe hier.',
  refused:
    'Diese Seite darf die Kamera nicht benutzen. Erlaube sie neben der Adresse, oder öffne den Link der Gruppe hier.',
  busy: 'Die Kamera startet nicht. Vielleicht benutzt sie ein anderes Programm.',
  picture: 'Was die Kamera sieht',
};
