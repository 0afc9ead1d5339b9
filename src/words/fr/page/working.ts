import type { LaterWords } from '../../catalogue.ts';
import { fixed } from '../../numbers.ts';
import { plural } from '../grammar.ts';

export const working: LaterWords['working'] = {
  heading: 'Calculs',
  empty: 'Chaque étape apparaît ici avec ses nombres dès qu’un repère a sa longueur.',
  lead: 'Chaque étape avec ses nombres, pour que vous puissiez la refaire à la main.',
  letters: {
    L: 'longueur lue sur la règle, moins le décalage du zéro',
    n: 'ordre de la résonance',
    f: 'fréquence du diapason',
    λ: 'longueur d’onde',
    e: 'correction d’extrémité',
    ℓ: 'longueur de la colonne d’air, correction d’extrémité comprise',
    v: 'vitesse du son dans le tube',
    w: 'fraction de la vitesse perdue à cause de la paroi',
    c: 'vitesse du son à l’air libre',
    'χ²': 'somme des carrés des écarts, chacun divisé par son incertitude',
    a: 'fraction de la demi-largeur dont la position peut s’écarter de la résonance',
    b: 'demi-largeur de la résonance',
    q: 'hausse par rapport au diapason seul, en rapport d’amplitudes',
    u: 'incertitude-type',
    U: 'incertitude élargie, k·u',
    t: 'température de l’air',
    h: 'humidité relative',
    p: 'pression de l’air',
    γ: 'rapport des deux capacités thermiques massiques du gaz',
    R: 'constante des gaz parfaits',
    T: 'température absolue',
    M: 'masse molaire du gaz',
    Δ: 'différence des deux vitesses',
  },
};

export const budget: LaterWords['budget'] = {
  region: 'Bilan d’incertitude',
  heading: 'D’où vient l’incertitude',
  table: 'Lignes du bilan',
};

export const fit: LaterWords['fit'] = {
  heading: 'Ajustement',
  lead: 'La pente est la vitesse dans le tube ; la droite commence au-dessous de zéro, de la valeur de la correction d’extrémité (du double pour une colonne ouverte).',
};

export const nextMarks: LaterWords['nextMarks'] = {
  heading: 'Et ensuite\u00a0?',
  lead: 'Les repères qui réduiraient le plus l’incertitude, avec les diapasons que vous avez.',
  none: 'Placez d’abord un repère sur une résonance, avec sa longueur.',
};

export const circle: LaterWords['circle'] = {
  heading: 'Pourquoi la position la plus sonore n’est pas la résonance',
  lead: 'Le micro entend deux sons de même fréquence : celui du diapason et celui de la colonne. La phase du son de la colonne change quand la longueur passe par la résonance, si bien que la somme des deux décrit un cercle. La résonance est à l’opposé du son du diapason ; la position la plus sonore est le point le plus éloigné de zéro.',
  mark: 'Résonance de',
  own: (name) => `Voici le cercle tel qu’il a été entendu\u00a0: ${name}.`,
  example:
    'Un exemple, pas encore le vôtre : une colonne dont le son vaut 1,5 fois celui du diapason et le devance de 60°. Passez par une résonance pendant que cette page écoute\u00a0: son repère montrera votre propre cercle.',
  tooLong: {
    inHalfWidths: (halfWidths, louderDb) =>
      `La position la plus sonore est à ${fixed(halfWidths, 2)} ${plural(halfWidths, 'demi-largeur', 'demi-largeurs')} de la résonance et le son y est plus fort de ${louderDb}\u00a0dB\u00a0: une colonne lue là est trop longue.`,
    inMillimetres: (halfWidths, mm, louderDb) =>
      `La position la plus sonore est à ${fixed(halfWidths, 2)} ${plural(halfWidths, 'demi-largeur', 'demi-largeurs')} (${mm}\u00a0mm) de la résonance et le son y est plus fort de ${louderDb}\u00a0dB\u00a0: une colonne lue là est trop longue.`,
  },
  tooShort: {
    inHalfWidths: (halfWidths, louderDb) =>
      `La position la plus sonore est à ${fixed(halfWidths, 2)} ${plural(halfWidths, 'demi-largeur', 'demi-largeurs')} de la résonance et le son y est plus fort de ${louderDb}\u00a0dB\u00a0: une colonne lue là est trop courte.`,
    inMillimetres: (halfWidths, mm, louderDb) =>
      `La position la plus sonore est à ${fixed(halfWidths, 2)} ${plural(halfWidths, 'demi-largeur', 'demi-largeurs')} (${mm}\u00a0mm) de la résonance et le son y est plus fort de ${louderDb}\u00a0dB\u00a0: une colonne lue là est trop courte.`,
  },
  alike: 'Ici, la position la plus sonore et la résonance sont les mêmes : les deux sons sont en phase.',
  nowhere:
    'Ici, le son de la colonne ne fait qu’affaiblir celui du diapason : aucune position n’est la plus sonore.',
  noMillimetres: 'En millimètres aussi, dès que le diamètre du tube et l’ordre de la résonance sont connus.',
  stays:
    'Tant que le diapason, la main et le micro restent comme ils sont, l’écart va du même côté à chaque résonance : répéter la mesure ne l’élimine pas. Pour l’éviter, lisez la règle quand cette page indique «\u00a0Ici\u00a0».',
};
