import type { LaterWords } from '../../catalogue.ts';

export const bringIn: LaterWords['bringIn'] = {
  files: 'Otwórz pliki (JSON, CSV, WAV; można wiele naraz)',
  filesName: 'Plik doświadczenia do otwarcia',
  table: 'Wklej lub wpisz tabelę',
  read: 'Odczytaj tabelę',
};
