import type { LaterWords } from '../catalogue.ts';
import { fullCentimetres, fullMillimetres, megabytes } from '../numbers.ts';

export const pastedName: LaterWords['pastedName'] = 'Texte collé';

export const otherFile: LaterWords['otherFile'] = {
  archive:
    'C’est un fichier de tableur ou une archive ZIP, que cette page n’ouvre pas. Enregistrez-le en CSV dans son programme et ouvrez ce CSV.',
  oldDocument:
    'C’est un ancien fichier de tableur ou un ancien document. Enregistrez-le en CSV dans son programme et ouvrez ce CSV.',
  compressed: 'Ce fichier est compressé. Décompressez-le d’abord.',
  pdf: 'C’est un PDF. On ne peut pas y lire les nombres\u00a0: ouvrez le tableau d’où il vient.',
  picture: 'C’est une image. On ne peut pas y lire les nombres.',
};

export const intakeFault: LaterWords['intakeFault'] = {
  empty: 'Le fichier est vide.',
  largeExperiment: (bytes, mostBytes) =>
    `Le fichier a ${megabytes(bytes)}\u00a0; une expérience a ${megabytes(mostBytes)} au plus.`,
  largeTable: (bytes, mostBytes) =>
    `Le fichier a ${megabytes(bytes)}\u00a0; un tableau de repères a ${megabytes(mostBytes)} au plus.`,
  unreadable: 'Le fichier ne peut pas être lu. S’il a été déplacé ou modifié, choisissez-le de nouveau.',
  longPaste: (millions) =>
    `Le texte a ${millions} millions de caractères\u00a0: aucun tableau de repères n’est aussi long.`,
  nested: 'Le fichier est bien plus imbriqué qu’une expérience\u00a0: c’est autre chose.',
  noJson: (said) =>
    `Le fichier n’est pas un JSON complet (${said}). Enregistrez-le de nouveau sur cette page.`,
  classResult:
    'C’est le résultat d’une classe entière\u00a0: il ne contient pas de repères. Ouvrez les fichiers des groupes, ou le fichier CSV de la classe.',
  noResults: 'Le tableau a une ligne de titres, mais pas de résultats.',
  noUncertainty:
    'il faut une colonne standard_uncertainty_mps ou expanded_uncertainty_mps (95\u00a0%)\u00a0: sans elle, les résultats ne peuvent pas être pondérés.',
  noSpeed: (lowestMps, highestMps, typed) =>
    `doit être de ${lowestMps} à ${highestMps}\u00a0m/s, pas ${typed}. Vérifiez le nombre et son unité.`,
  recordFull: (mostBytes) =>
    `avec cette ligne, le fichier de l’expérience dépasserait ${megabytes(mostBytes)}. Commencez-en une autre pour le reste, ou raccourcissez les notes.`,
  listFull: (most) =>
    `une expérience contient ${most} repères, diapasons ou lieux au plus. Commencez-en une autre pour le reste.`,
  badOrder: (order, { lowest, highest }) =>
    `l’ordre doit aller de ${lowest} à ${highest}, pas ${order}. Laissez vide si vous ne savez pas.`,
  otherTube: (diameterM, ownDiameterM) =>
    `ce tube a un diamètre de ${fullMillimetres(diameterM)}\u00a0mm, celui de l’expérience de ${fullMillimetres(ownDiameterM)}\u00a0mm. Un autre tube est une autre expérience.`,
  otherMouth: (mouth, ownMouth) =>
    `cette embouchure est ${mouth}, celle de l’expérience ${ownMouth}. Un autre tube est une autre expérience.`,
  noReading: (zeroOffsetM, columnM, { lowest, highest }) =>
    `avec le décalage du zéro de la règle de ${fullCentimetres(zeroOffsetM)}\u00a0cm, une colonne de ${fullCentimetres(columnM)}\u00a0cm se lirait à ${fullCentimetres(columnM + zeroOffsetM)}\u00a0cm\u00a0; les lectures vont de ${fullCentimetres(lowest)}\u00a0cm à ${fullCentimetres(highest)}\u00a0cm. Ouvrez le tableau comme nouvelle expérience, ou changez d’abord le décalage du zéro sous Montage.`,
};

export const intakeRemark: LaterWords['intakeRemark'] = {
  notRead: (headings) => `Ces colonnes ne sont pas lues\u00a0: ${headings}.`,
  skipped: (rows) => `Ces lignes sont écartées (excluded) et illisibles\u00a0: ${rows}.`,
  mendFile:
    'Corrigez ces champs dans le fichier, ou enregistrez-le de nouveau depuis cette page\u00a0; puis ouvrez-le encore.',
  goodPart:
    'Dans la partie sans erreur, il manque ce qui est nommé ici\u00a0; les nombres non repris sont dans sa note.',
  widestTaken: (widestM) =>
    `Les longueurs ont des incertitudes différentes (l’habituelle là où rien n’est indiqué)\u00a0: la plus grande, ${fullMillimetres(widestM)}\u00a0mm, est prise pour toutes.`,
  offsetPutBack: (zeroOffsetM) =>
    `Les longueurs du tableau sont prises comme longueurs de la colonne\u00a0: le décalage du zéro de la règle, ${fullMillimetres(zeroOffsetM)}\u00a0mm, est ajouté de nouveau.`,
};
