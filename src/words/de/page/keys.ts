import type { LaterWords } from '../../catalogue.ts';

export const keys: LaterWords['keys'] = {
  heading: 'Tasten',
  keys: [
    ['L', 'zuhören, oder stoppen'],
    ['M', 'eine Marke setzen, deren Länge du später eintippst'],
    ['K', 'behalten, was vielleicht eine Resonanz ist; die neueste zuerst'],
    ['E', 'zur neuesten Marke ohne Länge; wenn es keine gibt, zum Feld für eine neue Marke'],
    ['Enter', 'die eingetippte Länge übernehmen und zur nächsten Marke gehen'],
    ['Esc', 'ein Feld verlassen, damit diese Tasten wieder gehen'],
    ['S', 'Übung: die Gabel anschlagen'],
    ['F', 'Übung: die Gabel an die Mündung halten, oder weg'],
    ['← →', 'die Länge um 1\u00a0mm ändern; zum Weiterschieben gedrückt halten'],
    ['Umschalt ← →', 'die Länge um 0,2\u00a0mm ändern'],
    ['Strg Z', 'rückgängig'],
    ['Strg Y', 'wiederholen'],
    ['?', 'diese Tasten zeigen'],
  ],
  close: 'Schließen',
};
