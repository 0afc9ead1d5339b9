import type { FirstWords } from '../../catalogue.ts';
import { plural } from '../grammar.ts';

export const marks: FirstWords['marks'] = {
  heading: 'Repères',
  undo: (step) => (step === null ? 'Annuler' : `Annuler\u00a0: ${step}`),
  redo: 'Rétablir',
  newMark: 'Nouveau repère',
  newLength: 'Longueur d’un nouveau repère',
  add: 'Ajouter un repère',
  waiting: (count) =>
    count === 1
      ? 'Il manque sa longueur à 1 repère. Tapez-la et appuyez sur Entrée.'
      : `Il manque leur longueur à ${count} repères. Tapez-en une et appuyez sur Entrée pour passer à la suivante.`,
  none: 'Pas encore de repère. Chaque résonance trouvée en fait un. Vous pouvez aussi appuyer sur M, ou taper une longueur au-dessus du tube.',
  deleted: (count) => `Repères supprimés (${count})`,
  bringBack: 'Récupérer',
  atLength: (centimetres) => `à ${centimetres}\u00a0cm`,
  bringBackAtLength: (centimetres) => `Récupérer le repère à ${centimetres}\u00a0cm`,
  withoutLength: 'sans longueur',
  bringBackWithoutLength: 'Récupérer le repère sans longueur',
};

export const markRow: FirstWords['markRow'] = {
  mark: (number) => `Repère ${number}`,
  length: (number) => `Longueur du repère ${number}`,
  waits: 'tapez sa longueur',
  overTube: 'Tapez-la au-dessus du tube',
  choose: 'Modifier',
  chooseNamed: (number) => `Modifier le repère ${number}`,
  fork: (number) => `Diapason du repère ${number}`,
  column: (number) => `Colonne du repère ${number}`,
  place: (number) => `Lieu du repère ${number}`,
  alsoChange: (count) =>
    `Modifier aussi ${plural(count, 'l’autre repère', `les ${count} autres repères`)} du même type`,
  unsure: (percent) =>
    `Résonance sûre à ${percent}\u00a0% seulement\u00a0: passez-y encore une fois avant de vous y fier.`,
  pass: (strike, pass) => `frappe ${strike}, passage ${pass}`,
  untested: (missing) =>
    missing === 1
      ? 'une résonance de plus permettrait de le vérifier'
      : 'deux résonances de plus permettraient de le vérifier',
  notSolved: 'pas encore calculé',
  leftOut: 'écarté',
  outlier: (cause) => `Valeur aberrante\u00a0: ${cause}`,
  order: (number) => `Ordre du repère ${number}`,
  autoOrder: 'ordre : auto',
  ordinal: (order) => `ordre ${order}`,
  locatedBy: (number) => `Comment la longueur du repère ${number} a été trouvée`,
  atCentre: 'au centre',
  atLoudest: 'à la position la plus sonore',
  leaveOut: 'Écarter',
  leaveOutNamed: (number) => `Écarter le repère ${number} de l’ajustement`,
  delete: 'Supprimer',
  deleteNamed: (number) => `Supprimer le repère ${number}`,
  again: (evidence) => `Nouveau passage\u00a0: ${evidence}`,
  separate: 'Séparer',
  separateNamed: (number) => `Séparer le nouveau passage du repère ${number}`,
  sameAsOther: 'Identique à…',
  sameAsNamed: (number) => `Repère de la même résonance que le repère ${number}`,
  same: (number) => `Identique à ${number}`,
  sameNamed: (number, other) => `Le repère ${number} est la même résonance que le repère ${other}`,
};

export const result: FirstWords['result'] = {
  region: 'Vitesse du son',
  heading: 'Détails du résultat',
  spoken: (speed) => `Vitesse du son\u00a0: ${speed}.`,
  none: '—',
  unit: 'm/s',
};

export const doubts: FirstWords['doubts'] = { heading: 'Avertissements' };
