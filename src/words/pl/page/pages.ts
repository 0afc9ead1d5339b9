import type { FirstWords, LaterWords } from '../../catalogue.ts';
import { counted } from '../grammar.ts';

export const pages: FirstWords['pages'] = {
  previous: 'Poprzednie',
  next: 'Następne',
  shown: 'Widoczne',
  part: (first, last) => `${first} do ${last}`,
};

export const list: LaterWords['list'] = {
  forks: {
    pages: 'Strony kamertonów',
    previous: 'Poprzednie kamertony',
    next: 'Następne kamertony',
    which: 'Które kamertony widać',
    ofAll: (total) => `z ${counted(total, 'kamertonu', 'kamertonów', 'kamertonów')}`,
  },
  places: {
    pages: 'Strony miejsc',
    previous: 'Poprzednie miejsca',
    next: 'Następne miejsca',
    which: 'Które miejsca widać',
    ofAll: (total) => `z ${counted(total, 'miejsca', 'miejsc', 'miejsc')}`,
  },
  marks: {
    pages: 'Strony znaczników',
    previous: 'Poprzednie znaczniki',
    next: 'Następne znaczniki',
    which: 'Które znaczniki widać',
    ofAll: (total) => `z ${counted(total, 'znacznika', 'znaczników', 'znaczników')}`,
  },
  deletedMarks: {
    pages: 'Strony usuniętych znaczników',
    previous: 'Poprzednie usunięte znaczniki',
    next: 'Następne usunięte znaczniki',
    which: 'Które usunięte znaczniki widać',
    ofAll: (total) =>
      `z ${counted(total, 'usuniętego znacznika', 'usuniętych znaczników', 'usuniętych znaczników')}`,
  },
  pairs: {
    pages: 'Strony par',
    previous: 'Poprzednie pary',
    next: 'Następne pary',
    which: 'Które pary widać',
    ofAll: (total) => `z ${counted(total, 'pary', 'par', 'par')}`,
  },
};
