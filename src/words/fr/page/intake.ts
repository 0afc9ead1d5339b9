import type { LaterWords } from '../../catalogue.ts';
import { megabytes } from '../../numbers.ts';
import { counted } from '../grammar.ts';

export const intakePage: LaterWords['intakePage'] = {
  heading: 'Ce qui arrive',
  files: 'Fichiers',
  toClass: 'Prendre dans la vue Classe',
  add: 'Ajouter à cette expérience',
  openOne: 'Ouvrir comme nouvelle expérience',
  openEach: 'Ouvrir chacun comme expérience',
  listen: 'Écouter les enregistrements',
  cancel: 'Annuler',
  close: 'Fermer sans rien changer',
  tooMany: (files, most) => `${files} fichiers à la fois, c’est trop\u00a0: ${most} sont possibles.`,
  tooLarge: (mostBytes) =>
    `Ces fichiers dépassent ensemble ${megabytes(mostBytes)}\u00a0: ouvrez-les en plusieurs fois.`,
  opened: (title) =>
    `«\u00a0${title}\u00a0» est ouverte. Ce qui était ouvert avant est dans la liste sous Dossiers, ou un pas en arrière avec «\u00a0Annuler\u00a0».`,
  leftClosed: (files) => `${files} fichiers n’ont pas été ouverts.`,
};

export const intakeContent: LaterWords['intakeContent'] = {
  experiment: (title, marks) => `expérience «\u00a0${title}\u00a0», ${counted(marks, 'repère', 'repères')}`,
  table: (rows) => `tableau, ${counted(rows, 'ligne', 'lignes')} de repères`,
  results: (results) => `tableau, ${counted(results, 'résultat', 'résultats')}`,
  recording: 'enregistrement',
  whole: (content) => `${content}.`,
  inPart: (content, faults) => `${content}\u00a0; ${counted(faults, 'erreur', 'erreurs')}.`,
  unusable: 'inutilisable.',
  ask: (content) => `N’utiliser que la partie sans erreur\u00a0: ${content}`,
  inRow: (row, message) => `ligne ${row}\u00a0: ${message}`,
  inField: (field, message) => `${field}\u00a0: ${message}`,
  inRowAndField: (row, field, message) => `ligne ${row}, ${field}\u00a0: ${message}`,
  more: (faults) => `et ${counted(faults, 'autre', 'autres')}.`,
};

export const usableFiles: LaterWords['usableFiles'] = {
  all: (files) => `Les ${files} fichiers sont utilisables.`,
  some: (usable, files) =>
    `Fichiers utilisables\u00a0: ${usable} sur ${files}. Ce qui ne va pas vient en premier.`,
  inPart: (usable, files, inPart) =>
    `Fichiers utilisables\u00a0: ${usable} sur ${files}, dont ${inPart} en partie. Ce qui ne va pas vient en premier.`,
};

export const takenTable: LaterWords['takenTable'] = {
  opened: (title) =>
    `«\u00a0${title}\u00a0» est ouverte comme nouvelle expérience. Ce qui était ouvert avant est dans la liste sous Dossiers.`,
  added: (marks) =>
    `${counted(marks, 'repère ajouté', 'repères ajoutés')}\u00a0; «\u00a0Annuler\u00a0» revient en arrière.`,
  leftOut: (rows, why) => `${counted(rows, 'ligne non reprise', 'lignes non reprises')}\u00a0: ${why}`,
  nothing: (why) => `Aucune ligne du tableau n’est utilisable. ${why}`,
  nothingOf: (title, why) => `Aucune ligne de ${title} n’est utilisable. ${why}`,
  unknownRow: (message) => `ligne\u00a0?\u00a0: ${message}`,
};
