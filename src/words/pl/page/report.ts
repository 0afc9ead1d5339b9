import type { LaterWords } from '../../catalogue.ts';

export const reportPage: LaterWords['reportPage'] = {
  name: 'Sprawozdanie',
  print: 'Drukuj lub zapisz jako PDF',
  save: 'Zapisz jako plik HTML',
  leaveWorking: 'Bez obliczeń, z miejscem na własne',
  back: 'Wróć do archiwum',
  lines: 'Na nazwiska i dyskusję są puste linie.',
  pending: 'Sprawozdanie:',
};
