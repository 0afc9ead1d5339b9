import type { FirstWords, LaterWords } from '../../catalogue.ts';
import { counted } from '../grammar.ts';

export const pages: FirstWords['pages'] = {
  previous: 'Précédent',
  next: 'Suivant',
  shown: 'Affichage',
  part: (first, last) => `${first} à ${last}`,
};

export const list: LaterWords['list'] = {
  forks: {
    pages: 'Pages de diapasons',
    previous: 'Diapasons précédents',
    next: 'Diapasons suivants',
    which: 'Diapasons affichés',
    ofAll: (total) => `sur ${counted(total, 'diapason', 'diapasons')}`,
  },
  places: {
    pages: 'Pages de lieux',
    previous: 'Lieux précédents',
    next: 'Lieux suivants',
    which: 'Lieux affichés',
    ofAll: (total) => `sur ${counted(total, 'lieu', 'lieux')}`,
  },
  marks: {
    pages: 'Pages de repères',
    previous: 'Repères précédents',
    next: 'Repères suivants',
    which: 'Repères affichés',
    ofAll: (total) => `sur ${counted(total, 'repère', 'repères')}`,
  },
  deletedMarks: {
    pages: 'Pages de repères supprimés',
    previous: 'Repères supprimés précédents',
    next: 'Repères supprimés suivants',
    which: 'Repères supprimés affichés',
    ofAll: (total) => `sur ${counted(total, 'repère supprimé', 'repères supprimés')}`,
  },
  pairs: {
    pages: 'Pages de paires',
    previous: 'Paires précédentes',
    next: 'Paires suivantes',
    which: 'Paires affichées',
    ofAll: (total) => `sur ${counted(total, 'paire', 'paires')}`,
  },
};
