import type { LaterWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const tableFault: LaterWords['tableFault'] = {
  cell: (number) => `Zelle ${number}`,
  noText: 'Das ist keine Textdatei. Speichere die Tabelle als CSV, nicht im Format der Tabellenkalkulation.',
  noContent: 'Die Datei ist leer.',
  noHeading: 'Die Datei hat keine Kopfzeile.',
  noRows: 'Die Datei hat eine Kopfzeile, aber keine Zeilen mit Marken.',
  allExcluded: 'Jede Zeile mit Marken ist ausgelassen (excluded).',
  columnTwice: 'die Spalte kommt mehrmals vor. Lösche eine, oder benenne sie um.',
  quotes: {
    unclosed: 'ein Anführungszeichen (") wird geöffnet und nie geschlossen. Schließe oder lösche es.',
    'text-behind':
      'nach einem schließenden Anführungszeichen (") steht noch Text. Schreib ihn davor, oder lösche die Anführungszeichen.',
    stray: 'in der Zelle steht ein einzelnes Anführungszeichen ("). Lösche es.',
  },
  manyRows: (rows, most) =>
    `Die Datei hat ${counted(rows, 'Zeile', 'Zeilen')}; höchstens ${most} sind möglich. Teile sie auf mehrere Dateien auf.`,
  manyCells: (cells, headings) =>
    `hier stehen ${counted(cells, 'Zelle', 'Zellen')} unter ${counted(headings, 'Überschrift', 'Überschriften')}.`,
  decimalCommas:
    'Bei Dezimalkommas setz Semikolons zwischen die Zellen, oder die Zellen in Anführungszeichen.',
  noneOf: (needed, found) => `in der Kopfzeile fehlen alle Spalten ${needed}. Dort steht: ${found}.`,
  putDelimiters:
    'Setz Kommas, Semikolons oder Tabulatoren zwischen die Zellen, und keinen Titel über die Kopfzeile (oder beginn ihn mit #).',
  putHeading: 'Setz eine Kopfzeile darüber.',
  missing: (found, needed) => `die Spalte fehlt. In der Kopfzeile steht: ${found}. Nötig sind: ${needed}.`,
  severalMissing: (found, needed) =>
    `diese Spalten fehlen. In der Kopfzeile steht: ${found}. Nötig sind: ${needed}.`,
  meant: (heading, column) => `Wenn „${heading}“ gemeint ist, nenn es ${column}.`,
  plainLengths: 'Längen ohne Einheit sind cm; eine Zelle darf ihre Einheit selbst nennen, etwa 158\u00a0mm.',
};
