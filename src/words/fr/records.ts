import type { FirstWords } from '../catalogue.ts';

export const tooLong: FirstWords['tooLong'] = {
  title: (length, longest) =>
    `Le titre a ${length} caractères\u00a0; ${longest} au plus sont possibles. Raccourcissez-le.`,
  place: (length, longest) =>
    `Le nom du lieu a ${length} caractères\u00a0; ${longest} au plus sont possibles. Raccourcissez-le.`,
  group: (length, longest) =>
    `Le nom du groupe a ${length} caractères\u00a0; ${longest} au plus sont possibles. Raccourcissez-le.`,
  fork_id: (length, longest) =>
    `Le nom du diapason a ${length} caractères\u00a0; ${longest} au plus sont possibles. Raccourcissez-le.`,
  note: (length, longest) =>
    `La note a ${length} caractères\u00a0; ${longest} au plus sont possibles. Raccourcissez-la.`,
};

export const keepingFault: FirstWords['keepingFault'] = {
  listFull: {
    marks: (most) =>
      `Une expérience contient ${most} repères au plus. Commencez-en une autre pour la suite (Dossiers).`,
    deletedMarks: (most) =>
      `Une expérience contient ${most} repères supprimés au plus. Récupérez-en, ou commencez une autre expérience (Dossiers).`,
    forks: (most) =>
      `Une expérience contient ${most} diapasons au plus. Retirez-en un qui n’a pas de repères.`,
    places: (most) => `Une expérience contient ${most} lieux au plus. Retirez-en un qui n’a pas de repères.`,
  },
  unreadable: (why) => `Cela ne peut pas être enregistré\u00a0: ${why}`,
  tooLarge: (megabytes, mostMegabytes) =>
    `L’expérience aurait ${megabytes}\u00a0Mo\u00a0; son fichier peut avoir ${mostMegabytes}\u00a0Mo. Commencez-en une autre pour la suite (Dossiers), ou raccourcissez les notes.`,
};

export const notLoaded: FirstWords['notLoaded'] = {
  missing: 'elle n’est plus là.',
  unreadable: (why) => `${why} Sous Dossiers, on peut l’enregistrer telle quelle.`,
};
