import type { FirstWords, LaterWords } from '../../catalogue.ts';

export const pages: FirstWords['pages'] = {
  previous: 'Anterior',
  next: 'Próxima',
  shown: 'Visíveis',
  part: (first, last) => `${first} a ${last}`,
};

export const list: LaterWords['list'] = {
  forks: {
    pages: 'Páginas de diapasões',
    previous: 'Diapasões anteriores',
    next: 'Próximos diapasões',
    which: 'Quais diapasões são mostrados',
    ofAll: (total) => `de ${total} diapasões`,
  },
  places: {
    pages: 'Páginas de locais',
    previous: 'Locais anteriores',
    next: 'Próximos locais',
    which: 'Quais locais são mostrados',
    ofAll: (total) => `de ${total} locais`,
  },
  marks: {
    pages: 'Páginas de marcas',
    previous: 'Marcas anteriores',
    next: 'Próximas marcas',
    which: 'Quais marcas são mostradas',
    ofAll: (total) => `de ${total} marcas`,
  },
  deletedMarks: {
    pages: 'Páginas de marcas apagadas',
    previous: 'Marcas apagadas anteriores',
    next: 'Próximas marcas apagadas',
    which: 'Quais marcas apagadas são mostradas',
    ofAll: (total) => `de ${total} marcas apagadas`,
  },
  pairs: {
    pages: 'Páginas de pares',
    previous: 'Pares anteriores',
    next: 'Próximos pares',
    which: 'Quais pares são mostrados',
    ofAll: (total) => `de ${total} pares`,
  },
};
