import type { FirstWords } from '../../catalogue.ts';
import { counted, plural } from '../grammar.ts';

export const frame: FirstWords['frame'] = {
  heading: 'Luftsäulen-Messplatz',
  views: 'Ansichten',
  viewNames: {
    measure: 'Messen',
    apparatus: 'Aufbau',
    check: 'Prüfen',
    working: 'Rechnung',
    compare: 'Vergleichen',
    records: 'Ablage',
  },
  keys: 'Tasten',
  language: 'Sprache',
  languageNotLoaded:
    'Diese Sprache ließ sich nicht laden, daher bleibt die Seite bei der jetzigen. Versuch es noch einmal, wenn du online bist.',
  theme: 'Darstellung',
  themeNames: { system: 'auto', light: 'hell', dark: 'dunkel' },
  drop: 'Loslassen zum Öffnen',
  groupsTaken: (count) => `${counted(count, 'Gruppe', 'Gruppen')} in die Klasse übernommen.`,
  close: 'Schließen',
  doubts: (count) => counted(count, 'Warnung', 'Warnungen'),
  lengthsToType: (count) => `${plural(count, 'Länge', `${count} Längen`)} eintippen`,
  saved: {
    nothing: '',
    saved: 'Gespeichert',
    saving: 'Wird gespeichert…',
    refused: 'Nicht auf diesem Gerät gespeichert',
  },
};

export const failed: FirstWords['failed'] = {
  heading: (part) =>
    part === null
      ? 'Dieser Teil der Seite ist ausgefallen.'
      : `Dieser Teil der Seite ist ausgefallen: ${part}.`,
  detail:
    'Alles andere geht weiter. Versuch es noch einmal. Wenn er gleich nach deinem letzten Schritt ausgefallen ist, mach diesen rückgängig. Die Datei des Experiments kannst du auf jeden Fall speichern.',
  again: 'Noch einmal versuchen',
  undo: 'Letzten Schritt rückgängig machen',
  save: 'Datei des Experiments speichern',
};
