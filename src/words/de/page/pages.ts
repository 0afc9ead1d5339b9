import type { FirstWords, LaterWords } from '../../catalogue.ts';

export const pages: FirstWords['pages'] = {
  previous: 'Zurück',
  next: 'Weiter',
  shown: 'Gezeigt',
  part: (first, last) => `${first} bis ${last}`,
};

export const list: LaterWords['list'] = {
  forks: {
    pages: 'Seiten der Gabeln',
    previous: 'Vorige Gabeln',
    next: 'Nächste Gabeln',
    which: 'Welche Gabeln gezeigt werden',
    ofAll: (total) => `von ${total} Gabeln`,
  },
  places: {
    pages: 'Seiten der Orte',
    previous: 'Vorige Orte',
    next: 'Nächste Orte',
    which: 'Welche Orte gezeigt werden',
    ofAll: (total) => `von ${total} Orten`,
  },
  marks: {
    pages: 'Seiten der Marken',
    previous: 'Vorige Marken',
    next: 'Nächste Marken',
    which: 'Welche Marken gezeigt werden',
    ofAll: (total) => `von ${total} Marken`,
  },
  deletedMarks: {
    pages: 'Seiten der gelöschten Marken',
    previous: 'Vorige gelöschte Marken',
    next: 'Nächste gelöschte Marken',
    which: 'Welche gelöschten Marken gezeigt werden',
    ofAll: (total) => `von ${total} gelöschten Marken`,
  },
  pairs: {
    pages: 'Seiten der Paare',
    previous: 'Vorige Paare',
    next: 'Nächste Paare',
    which: 'Welche Paare gezeigt werden',
    ofAll: (total) => `von ${total} Paaren`,
  },
};
