import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const recordFault: FirstWords['recordFault'] = {
  at: (path, what) => `${path}\u00a0: ${what}`,
  mustBe: {
    object: (found) => `doit être un objet\u00a0; on y trouve\u00a0: ${found}.`,
    'whole-number': (found) => `doit être un nombre entier\u00a0; on y trouve\u00a0: ${found}.`,
    flag: (found) => `doit être true ou false\u00a0; on y trouve\u00a0: ${found}.`,
    text: (found, longest) =>
      `doit être un texte de ${longest} caractères au plus\u00a0; on y trouve\u00a0: ${found}.`,
    list: (found, longest) =>
      `doit être une liste de ${counted(longest, 'élément', 'éléments')} au plus\u00a0; on y trouve\u00a0: ${found}.`,
    number: (found, lowest, highest) =>
      `doit être un nombre de ${lowest} à ${highest}\u00a0; on y trouve\u00a0: ${found}.`,
    choice: (found, choices) => `doit être l’une des valeurs ${choices}\u00a0; on y trouve\u00a0: ${found}.`,
    reading: (found, lowest, highest, zeroOffset) =>
      `doit être de ${lowest} à ${highest}, pour que le décalage du zéro de ${zeroOffset} laisse une colonne\u00a0; on y trouve\u00a0: ${found}.`,
  },
  unequalLists: (one, other) => `doit avoir autant de valeurs dans ${one} que dans ${other}.`,
  sameId: {
    forks: 'forks\u00a0: deux diapasons ont le même id.',
    places: 'places\u00a0: deux lieux ont le même id.',
    marks: 'marks\u00a0: deux repères ont le même id.',
  },
  ofMark: {
    fork: (markId, id) =>
      `repère ${markId}\u00a0: il n’y a pas de diapason «\u00a0${id}\u00a0» dans ce fichier.`,
    place: (markId, id) =>
      `repère ${markId}\u00a0: il n’y a pas de lieu «\u00a0${id}\u00a0» dans ce fichier.`,
  },
  ofPresent: {
    fork: (id) => `present\u00a0: il n’y a pas de diapason «\u00a0${id}\u00a0» dans ce fichier.`,
    place: (id) => `present\u00a0: il n’y a pas de lieu «\u00a0${id}\u00a0» dans ce fichier.`,
  },
  noObject: 'Ce n’est pas une expérience\u00a0: un objet JSON est attendu.',
  newerVersion: (version, newest) =>
    `Cela vient d’une version plus récente de cette page (schemaVersion est ${version}\u00a0; celle-ci lit jusqu’à ${newest}). Rechargez la page pour la mettre à jour, puis ouvrez-le encore.`,
  noVersion: (found, newest) =>
    `schemaVersion doit être un nombre entier de 1 à ${newest}\u00a0; on y trouve\u00a0: ${found}. C’est peut-être le fichier d’un autre programme.`,
  unreadable: (said) => `Ceci ne peut pas être lu (${said}).`,
};
