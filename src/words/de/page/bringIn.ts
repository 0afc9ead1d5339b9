import type { LaterWords } from '../../catalogue.ts';

export const bringIn: LaterWords['bringIn'] = {
  files: 'Dateien öffnen (JSON, CSV, WAV; auch viele auf einmal)',
  filesName: 'Zu öffnende Datei eines Experiments',
  table: 'Tabelle einfügen oder tippen',
  read: 'Tabelle lesen',
};
