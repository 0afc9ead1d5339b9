import type { LaterWords } from '../../catalogue.ts';

export const compare: LaterWords['compare'] = {
  region: 'Comparer',
  heading: 'La différence est-elle réelle ?',
  lead: 'Les erreurs communes aux deux résultats (même règle, même diapason) se compensent. Seules les autres comptent.',
  by: 'Comparer',
  ways: {
    place: 'lieux (et leurs températures)',
    fork: 'diapasons',
    ends: 'colonnes fermées et ouvertes',
  },
  theoryHidden: 'Cette séance cache la vitesse prévue.',
  noMark: 'Aucun repère n’a encore de longueur. Placez d’abord un repère sur une résonance, sous Mesurer.',
  onlyOne: {
    place: (name) =>
      `Il n’y a encore que «\u00a0${name}\u00a0» à comparer. Ajoutez un lieu sous Montage, choisissez-le au-dessus de la colonne et placez-y un repère sur une résonance.`,
    fork: (name) =>
      `Il n’y a encore que «\u00a0${name}\u00a0» à comparer. Ajoutez un diapason sous Montage, choisissez-le au-dessus de la colonne et placez un repère sur une de ses résonances.`,
    ends: (name) =>
      `Il n’y a encore que «\u00a0${name}\u00a0» à comparer. Choisissez l’autre type de colonne au-dessus de l’image et placez un repère sur une de ses résonances.`,
  },
  manyPairs: (groups) =>
    `À ${groups}, cela fait ${(groups * (groups - 1)) / 2} paires. Choisissez ce que vous comparez à chacun des autres.`,
  against: 'Comparer aux autres',
};

export const temperatures: LaterWords['temperatures'] = {
  heading: 'Vitesse en fonction de la température',
  lead: 'Un point par lieu. La bande montre la vitesse prévue, de l’air sec à l’air saturé.',
  columns: { place: 'Lieu', speed: 'Vitesse', theory: 'Écart à la vitesse prévue' },
  noSpeed: '—',
  noTemperature: 'température non notée',
};

export const ends: LaterWords['ends'] = {
  heading: 'Correction d’extrémité en fonction du diamètre',
  lead: 'Un point par tube. Mesurez chaque tube dans sa propre expérience ; il faut des résonances de deux ordres pour la correction d’extrémité.',
};

export const turned: LaterWords['turned'] = {
  heading: 'Inverser la question',
  lead: 'Les mêmes repères, avec une autre inconnue.',
  fork: 'Vitesse connue, diapason inconnu',
  temperature: 'Diapason connu, température inconnue',
  gas: 'Diapason et température connus, gaz inconnu',
  ends: 'Correction d’extrémité rapportée au diamètre',
  pending: '…',
};
