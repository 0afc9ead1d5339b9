import type { LaterWords } from '../catalogue.ts';
import { counted, plural } from './grammar.ts';

export const classResult: LaterWords['classResult'] = {
  none: 'Aucun groupe n’a encore de résultat.',
  counted: (groups, all) => `${counted(groups, 'groupe compté', 'groupes comptés')} sur ${all}.`,
  others: 'Les autres sont dans le tableau, avec la raison.',
  interval:
    'Pour 95 classes comme celle-ci sur 100, la vitesse vraie est dans l’intervalle ±, si les groupes n’ont aucune erreur commune.',
  spread: (mps) =>
    `Les résultats des groupes diffèrent plus que leurs incertitudes ne l’expliquent\u00a0: de ${mps}\u00a0m/s en plus (écart-type). Un groupe seul ne peut pas voir de telles erreurs.`,
  noSpread: 'Les groupes ne diffèrent pas plus que leurs incertitudes ne l’expliquent.',
  noAir: 'Aucun groupe n’a noté de température : les vitesses sont utilisées telles quelles.',
  referred: (celsius) =>
    `Toutes les vitesses sont ramenées à ${celsius}\u00a0°C par la formule de la vitesse du son dans l’air.`,
  withoutAir: (groups) =>
    plural(
      groups,
      `${groups} groupe n’a pas noté de température\u00a0: sa vitesse est utilisée telle quelle.`,
      `${groups} groupes n’ont pas noté de température\u00a0: leurs vitesses sont utilisées telles quelles.`,
    ),
  theory: (mps, difference) =>
    `La vitesse prévue pour cet air est de ${mps}\u00a0m/s. Écart de la classe à cette vitesse\u00a0: ${difference}\u00a0m/s.`,
  shared:
    'Les erreurs communes à tous les groupes, comme celles de règles de même fabrication, ne s’éliminent pas en moyenne ; cette incertitude ne les contient pas.',
  method:
    'Méthode : moyenne d’un modèle à effets aléatoires (Paule & Mandel 1982) ; intervalle selon Hartung & Knapp 2001.',
};

export const classGroup: LaterWords['classGroup'] = {
  row: (number) => `Ligne ${number}`,
  mark: (number) => `Repère ${number}`,
  markCause: (mark, cause) => `${mark}\u00a0: ${cause}`,
  noResult: 'Pas de résultat.',
  outlier: (difference) =>
    `Valeur aberrante, non comptée\u00a0: écart de ${difference}\u00a0m/s au résultat de la classe.`,
  noReason: 'Il est venu sans repères qui pourraient montrer pourquoi.',
  held: 'Non compté tant que vous ne l’avez pas vérifié. Cochez-le pour le compter tel quel.',
  longColumn: (metres) =>
    `Une colonne de ${metres}\u00a0m est plus longue que les tubes scolaires. A-t-on tapé des millimètres pour des centimètres\u00a0?`,
  resultAlone: 'Un résultat sans repères.',
  noAir: 'Température non notée : la vitesse est utilisée telle quelle.',
  unnamed: (table, row) => `${table}, ligne ${row}`,
};

export const sameGroup: LaterWords['sameGroup'] = {
  'same marks': (group) => `Les mêmes repères que «\u00a0${group}\u00a0».`,
  'earlier state of the same experiment': (group) => `Une version antérieure de «\u00a0${group}\u00a0».`,
  'same group again': (group) => `Le même groupe que «\u00a0${group}\u00a0».`,
};

export const classDiscussion: LaterWords['classDiscussion'] = {
  spread:
    'Les résultats des groupes diffèrent plus que leurs incertitudes ne le permettent. À quoi personne n’a-t-il pensé ?',
  agree: 'Les groupes s’accordent dans leurs incertitudes. Quelle erreur tous ont-ils pu faire ensemble ?',
  apart: (groups) =>
    `Ces résultats sont à l’écart\u00a0: ${groups}. Ils apprennent quelque chose à tous\u00a0: qu’est-ce qui, dans le montage, donnerait exactement cet écart\u00a0?`,
  others: (count) => counted(count, 'autre', 'autres'),
  temperatures: (coldest, warmest) =>
    `La température de l’air allait de ${coldest} à ${warmest}\u00a0°C. Sur le graphique de la vitesse et de la température, combien de m/s par degré trouvez-vous, et les incertitudes des groupes sont-elles assez petites pour le voir\u00a0?`,
  moreGroups: 'Que deviendraient la moyenne et son incertitude si deux fois plus de groupes avaient mesuré ?',
};

export const spreadPicture: LaterWords['spreadPicture'] = {
  title: 'Dispersion de la classe',
  heading: 'Vitesse du son, groupe par groupe',
  axis: 'vitesse du son, m/s (barres : 95\u00a0%)',
  shows: (groups, mps, uncertainty) =>
    `${counted(groups, 'groupe', 'groupes')}, du plus lent au plus rapide, avec les intervalles à 95\u00a0%. La bande montre le résultat de la classe, ${mps} ± ${uncertainty}\u00a0m/s. Les points vides ne sont pas comptés.`,
  outliers: (count) =>
    plural(count, 'La croix est une valeur aberrante.', `Les ${count} croix sont des valeurs aberrantes.`),
  beyond: 'Ce qui dépasse du cadre est dessiné au bord.',
};
