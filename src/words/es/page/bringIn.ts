import type { LaterWords } from '../../catalogue.ts';

export const bringIn: LaterWords['bringIn'] = {
  files: 'Abrir archivos (JSON, CSV, WAV; muchos a la vez)',
  filesName: 'Archivo de experimento que abrir',
  table: 'Pegar o escribir una tabla',
  read: 'Leer la tabla',
};
