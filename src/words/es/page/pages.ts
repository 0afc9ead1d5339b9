import type { FirstWords, LaterWords } from '../../catalogue.ts';

export const pages: FirstWords['pages'] = {
  previous: 'Anteriores',
  next: 'Siguientes',
  shown: 'Se muestran',
  part: (first, last) => `${first} a ${last}`,
};

export const list: LaterWords['list'] = {
  forks: {
    pages: 'Páginas de diapasones',
    previous: 'Diapasones anteriores',
    next: 'Diapasones siguientes',
    which: 'Qué diapasones se muestran',
    ofAll: (total) => `de ${total} diapasones`,
  },
  places: {
    pages: 'Páginas de lugares',
    previous: 'Lugares anteriores',
    next: 'Lugares siguientes',
    which: 'Qué lugares se muestran',
    ofAll: (total) => `de ${total} lugares`,
  },
  marks: {
    pages: 'Páginas de marcas',
    previous: 'Marcas anteriores',
    next: 'Marcas siguientes',
    which: 'Qué marcas se muestran',
    ofAll: (total) => `de ${total} marcas`,
  },
  deletedMarks: {
    pages: 'Páginas de marcas borradas',
    previous: 'Marcas borradas anteriores',
    next: 'Marcas borradas siguientes',
    which: 'Qué marcas borradas se muestran',
    ofAll: (total) => `de ${total} marcas borradas`,
  },
  pairs: {
    pages: 'Páginas de pares',
    previous: 'Pares anteriores',
    next: 'Pares siguientes',
    which: 'Qué pares se muestran',
    ofAll: (total) => `de ${total} pares`,
  },
};
