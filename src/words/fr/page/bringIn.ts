import type { LaterWords } from '../../catalogue.ts';

export const bringIn: LaterWords['bringIn'] = {
  files: 'Ouvrir des fichiers (JSON, CSV, WAV\u00a0; plusieurs à la fois)',
  filesName: 'Fichier d’expérience à ouvrir',
  table: 'Coller ou taper un tableau',
  read: 'Lire le tableau',
};
