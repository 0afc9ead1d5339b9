import type { LaterWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const tableFault: LaterWords['tableFault'] = {
  cell: (number) => `case ${number}`,
  noText: 'Ce n’est pas un fichier texte. Enregistrez le tableau en CSV, pas au format du tableur.',
  noContent: 'Le fichier est vide.',
  noHeading: 'Le fichier n’a pas de ligne de titres.',
  noRows: 'Le fichier a une ligne de titres, mais aucune ligne de repères.',
  allExcluded: 'Toutes les lignes de repères sont écartées (excluded).',
  columnTwice: 'la colonne apparaît plusieurs fois. Supprimez-en une, ou renommez-la.',
  quotes: {
    unclosed: 'un guillemet (") est ouvert et jamais fermé. Fermez-le, ou supprimez-le.',
    'text-behind':
      'il y a du texte après un guillemet fermant ("). Mettez-le entre les guillemets, ou supprimez-les.',
    stray: 'il y a un guillemet isolé (") dans la case. Supprimez-le.',
  },
  manyRows: (rows, most) =>
    `Le fichier a ${counted(rows, 'ligne', 'lignes')}\u00a0; ${most} au plus sont possibles. Partagez-le en plusieurs fichiers.`,
  manyCells: (cells, headings) =>
    `il y a ${counted(cells, 'case', 'cases')} sous ${counted(headings, 'titre', 'titres')}.`,
  decimalCommas:
    'Avec des virgules décimales, séparez les cases par des points-virgules, ou mettez-les entre guillemets.',
  noneOf: (needed, found) =>
    `il manque toutes les colonnes ${needed} dans les titres. On y lit\u00a0: ${found}.`,
  putDelimiters:
    'Séparez les cases par des virgules, des points-virgules ou des tabulations, sans titre au-dessus des noms de colonnes (ou commencez-le par #).',
  putHeading: 'Mettez une ligne de titres en haut.',
  missing: (found, needed) => `la colonne manque. Les titres sont\u00a0: ${found}. Il faut\u00a0: ${needed}.`,
  severalMissing: (found, needed) =>
    `ces colonnes manquent. Les titres sont\u00a0: ${found}. Il faut\u00a0: ${needed}.`,
  meant: (heading, column) => `Si c’est «\u00a0${heading}\u00a0», appelez-la ${column}.`,
  plainLengths:
    'Les longueurs sans unité sont en cm\u00a0; une case peut avoir sa propre unité, comme 158\u00a0mm.',
};
