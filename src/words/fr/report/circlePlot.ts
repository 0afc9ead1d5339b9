import type { LaterWords } from '../../catalogue.ts';

export const circlePlot: LaterWords['circlePlot'] = {
  title: (name) => `Ce qu’entend le micro\u00a0: ${name}`,
  example: 'un exemple',
  x: 'en phase avec le son du diapason (pris égal à 1)',
  y: 'en avance d’un quart de période',
  silence: 'zéro',
  direct: 'diapason seul',
  resonance: 'résonance',
  loudest: 'le plus fort',
  tooShort: 'trop courte',
  tooLong: 'trop longue',
  way: 'Le cercle part du son du diapason (anneau), passe par la résonance, à l’opposé (losange), et revient, d’une colonne trop courte de 6 demi-largeurs à une colonne trop longue de 6 demi-largeurs. Les croix marquent le zéro et une demi-largeur de chaque côté.',
  ahead: (times, degrees) =>
    `À la résonance, le son de la colonne vaut ${times} fois celui du diapason et le devance de ${degrees}°.`,
  behind: (times, degrees) =>
    `À la résonance, le son de la colonne vaut ${times} fois celui du diapason, avec un retard de ${degrees}°.`,
  loudestTooLong: (halfWidths) =>
    `Le trait en tirets va de zéro à la position la plus sonore (disque), où la colonne est trop longue de ${halfWidths} fois la demi-largeur.`,
  loudestTooShort: (halfWidths) =>
    `Le trait en tirets va de zéro à la position la plus sonore (disque), où la colonne est trop courte de ${halfWidths} fois la demi-largeur.`,
  loudestAlike:
    'Le trait en tirets va de zéro à la position la plus sonore (disque), qui est la résonance elle-même.',
};
