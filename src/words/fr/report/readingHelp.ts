import type { LaterWords } from '../../catalogue.ts';

export const readingHelp: LaterWords['readingHelp'] = {
  legend:
    'Dans les graphiques, un point est un repère et la barre qui le traverse son incertitude. La droite est l’ajustement. Une croix est une valeur aberrante, que l’ajustement ne compte pas.',
  termsHeading: 'Ce que signifient les lettres',
  terms: {
    k: 'le facteur d’élargissement. L’incertitude-type multipliée par k donne un intervalle qui contient la valeur vraie dans 95 mesures comme celle-ci sur 100.',
    ν: 'les degrés de liberté : à quel point l’incertitude elle-même est connue. Moins il y en a, plus k est grand.',
    Eₙ: 'la différence de deux valeurs, divisée par leur incertitude élargie commune. Entre −1 et 1, les deux s’accordent.',
  },
  sourcesHeading: 'Sources',
  sources: {
    speed: (references) => `Vitesse du son dans l’air : ${references}.`,
    end: (references) => `Correction d’extrémité : ${references}.`,
    wall: (references) => `Ralentissement dû à la paroi : ${references}.`,
    uncertainty: (references) => `Incertitude : ${references}.`,
  },
};
