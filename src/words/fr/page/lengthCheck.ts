import type { FirstWords } from '../../catalogue.ts';

export const lengthAnswer: FirstWords['lengthAnswer'] = {
  listening: 'À l’écoute',
  how: 'Frappez le diapason. Tenez-le deux secondes à l’embouchure, deux secondes au loin, et ainsi de suite, trois fois.',
  verdicts: {
    resonant: 'Résonance',
    'not-resonant': 'Pas de résonance',
    'cannot-tell': 'Impossible à dire encore',
  },
  fewChanges: (comparisons) =>
    `Le diapason est venu à l’embouchure ou en est parti ${comparisons} fois jusqu’ici\u00a0; il en faut au moins trois.`,
  hindrances: {
    'no-fork': 'Aucun diapason n’a encore été entendu. Frappez-le et tenez-le à l’embouchure.',
    'lost-sound': 'Du son a été perdu entre-temps : fermez les autres programmes et recommencez.',
    noise:
      'La salle est trop bruyante à côté du diapason pour comparer. Frappez plus fort, tenez le diapason plus près, ou attendez un moment plus calme.',
    unsteady:
      'Le niveau change aussi autrement. Laissez la colonne comme elle est, et tenez le diapason immobile à chacun de ses deux endroits.',
  },
  rise: (riseDb, uncertaintyDb, comparisons) =>
    `À l’embouchure, le diapason est plus fort de ${riseDb} ± ${uncertaintyDb}\u00a0dB (95\u00a0%), comparé ${comparisons} fois.`,
};
