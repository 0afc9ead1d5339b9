import type { FirstWords } from '../../catalogue.ts';

export const field: FirstWords['field'] = {
  length: 'Longueur',
  centimetres: 'cm',
  changeSign: 'Au-dessus ou au-dessous de zéro',
  dash: 'Tiret, puis une deuxième longueur',
  take: 'Utiliser quand même',
  stillWaits:
    'Vous avez tapé ceci plus tôt, et ce n’est pas encore utilisé. Appuyez sur Entrée pour l’utiliser.',
  forget: 'Effacer',
  tooLong: (characters, most) =>
    `Non collé\u00a0: le champ aurait ${characters} caractères et peut en avoir ${most}. Collez un texte plus court.`,
  workingOut: 'calcul en cours…',
};
