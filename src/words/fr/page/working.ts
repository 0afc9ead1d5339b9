import type { LaterWords } from '../../catalogue.ts';
import { fixed } from '../../numbers.ts';
import { plural } from '../grammar.ts';

export const working: LaterWords['working'] = {
  heading: 'Calculs',
  empty: 'Chaque étape apparaît ici avec ses nombres dès qu’un repère a sa longueur.',
  lead: 'Pour que vous puissiez refaire chaque étape à la main.',
  letters: {
    L: 'longueur lue sur la règle, moins le décalage du zéro',
    n: 'ordre de la résonance',
    f: 'fréquence du diapason',
    λ: 'longueur d’onde',
    e: 'correction d’extrémité',
    ℓ: 'longueur de la colonne d’air, correction d’extrémité comprise',
    v: 'vitesse du son dans le tube',
    w: 'part de la vitesse que les parois enlèvent',
    c: 'vitesse du son à l’air libre',
    'χ²': 'somme des carrés des écarts, chacun divisé par son incertitude',
    a: 'part de la demi-largeur dont la position peut s’écarter de la résonance',
    b: 'demi-largeur de la résonance',
    q: 'hausse par rapport au diapason seul, en rapport d’amplitudes',
    u: 'incertitude-type',
    U: 'incertitude élargie, k·u',
    t: 'température de l’air',
    h: 'humidité relative',
    p: 'pression de l’air',
    γ: 'rapport des deux chaleurs massiques du gaz',
    R: 'constante des gaz',
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
  lead: 'La pente est la vitesse dans le tube ; la droite commence sous zéro, d’une correction d’extrémité (deux pour une colonne ouverte).',
};

export const nextMarks: LaterWords['nextMarks'] = {
  heading: 'Et ensuite',
  lead: 'Les repères qui réduiraient le plus l’incertitude, avec les diapasons que vous avez.',
  none: 'Mettez d’abord un repère à une résonance, avec sa longueur.',
};

export const circle: LaterWords['circle'] = {
  heading: 'Pourquoi la position la plus sonore n’est pas la résonance',
  lead: 'Le micro entend deux sons de même fréquence : celui du diapason et celui de la colonne. La phase de celui de la colonne tourne quand la longueur passe par la résonance, si bien que leur somme décrit un cercle. La résonance est à l’opposé du son du diapason ; la position la plus sonore est le point le plus éloigné de zéro.',
  mark: 'Résonance de',
  own: (name) => `Voici le cercle tel qu’il a été entendu\u00a0: ${name}.`,
  example:
    'Un exemple, pas encore le vôtre : une colonne dont le son vaut 1,5 fois celui du diapason et le devance de 60°. Faites glisser au-delà d’une résonance pendant que cette page écoute : son repère apporte votre propre cercle.',
  tooLong: {
    inHalfWidths: (halfWidths, louderDb) =>
      `La position la plus sonore est à ${fixed(halfWidths, 2)} ${plural(halfWidths, 'demi-largeur', 'demi-largeurs')} de la résonance et plus forte de ${louderDb} dB\u00a0: une colonne lue là est trop longue.`,
    inMillimetres: (halfWidths, mm, louderDb) =>
      `La position la plus sonore est à ${fixed(halfWidths, 2)} ${plural(halfWidths, 'demi-largeur', 'demi-largeurs')} (${mm} mm) de la résonance et plus forte de ${louderDb} dB\u00a0: une colonne lue là est trop longue.`,
  },
  tooShort: {
    inHalfWidths: (halfWidths, louderDb) =>
      `La position la plus sonore est à ${fixed(halfWidths, 2)} ${plural(halfWidths, 'demi-largeur', 'demi-largeurs')} de la résonance et plus forte de ${louderDb} dB\u00a0: une colonne lue là est trop courte.`,
    inMillimetres: (halfWidths, mm, louderDb) =>
      `La position la plus sonore est à ${fixed(halfWidths, 2)} ${plural(halfWidths, 'demi-largeur', 'demi-largeurs')} (${mm} mm) de la résonance et plus forte de ${louderDb} dB\u00a0: une colonne lue là est trop courte.`,
  },
  alike: 'Ici, la position la plus sonore et la résonance sont les mêmes : les deux sons sont en phase.',
  nowhere:
    'Ici, le son de la colonne ne fait qu’affaiblir celui du diapason : aucune position n’est la plus sonore.',
  noMillimetres: 'En millimètres aussi, dès que le diamètre du tube et l’ordre de la résonance sont connus.',
  stays:
    'Tant que le diapason, la main et le micro restent comme ils sont, l’écart va du même côté à chaque résonance : répéter ne l’élimine pas en moyenne. Lire quand cette page indique « Ici » l’évite.',
};
