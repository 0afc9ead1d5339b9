import type { FirstWords } from '../../catalogue.ts';
import { counted } from '../grammar.ts';

export const lengthAnswer: FirstWords['lengthAnswer'] = {
  listening: 'Escuchando',
  how: 'Golpea el diapasón. Ponlo dos segundos en la boca, dos lejos, y así sucesivamente, tres veces.',
  verdicts: {
    resonant: 'Resuena',
    'not-resonant': 'No resuena',
    'cannot-tell': 'Aún no se sabe',
  },
  fewChanges: (comparisons) =>
    `El diapasón ha llegado a la boca o se ha apartado ${counted(comparisons, 'vez', 'veces')} hasta ahora; hacen falta al menos tres.`,
  hindrances: {
    'no-fork': 'Aún no se ha oído ningún diapasón. Golpéalo y ponlo en la boca.',
    'lost-sound': 'Entretanto se perdió sonido: cierra otros programas y empieza de nuevo.',
    noise:
      'La sala hace demasiado ruido junto al diapasón para comparar. Golpea más fuerte, acerca el diapasón o espera a que haya más silencio.',
    unsteady:
      'El nivel cambia también de otras maneras. Deja la columna como está y mantén el diapasón quieto en cada una de sus dos posiciones.',
  },
  rise: (riseDb, uncertaintyDb, comparisons) =>
    `En la boca el diapasón suena ${riseDb} ± ${uncertaintyDb}\u00a0dB más fuerte (95\u00a0%), comparado ${counted(comparisons, 'vez', 'veces')}.`,
};
