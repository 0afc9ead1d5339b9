import type { LaterWords } from '../../catalogue.ts';

export const bringIn: LaterWords['bringIn'] = {
  files: 'Abrir arquivos (JSON, CSV, WAV; vários de uma vez)',
  filesName: 'Arquivo de experimento para abrir',
  table: 'Colar ou digitar uma tabela',
  read: 'Ler a tabela',
};
