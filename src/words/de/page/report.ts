import type { LaterWords } from '../../catalogue.ts';

export const reportPage: LaterWords['reportPage'] = {
  name: 'Protokoll',
  print: 'Drucken oder als PDF speichern',
  save: 'Als HTML-Datei speichern',
  leaveWorking: 'Rechnung weglassen, mit Platz zum Rechnen',
  back: 'Zurück zur Ablage',
  lines: 'Für Namen und Diskussion gibt es leere Zeilen.',
  pending: 'Das Protokoll:',
};
