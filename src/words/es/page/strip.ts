import type { FirstWords } from '../../catalogue.ts';
import { plural } from '../grammar.ts';

export const stripLabels: FirstWords['stripLabels'] = {
  nothing: 'Todavía no se ha oído nada.',
  alternative: (words) => `Nivel del último minuto. ${words}`,
  empty: 'Aquí se ve el último minuto de sonido mientras esta página escucha.',
  tone: 'tono a la frecuencia del diapasón',
  room: 'ruido de la sala a la misma frecuencia',
  all: 'todo el sonido',
  timeTick: (seconds) => `${seconds}\u00a0s`,
  levelTick: (levelDb) => `${levelDb}\u00a0dB`,
};

export const stripSpoken: FirstWords['stripSpoken'] = {
  strikes: (strikes) => plural(strikes, 'Se ha oído un golpe.', `Se han oído ${strikes} golpes.`),
  noResonance: 'No se ha encontrado ninguna resonancia.',
  resonances: (resonances) => `Resonancias: ${resonances}.`,
  resonance: (seconds, riseDb) => `a los ${seconds}\u00a0s, subida ${riseDb}\u00a0dB`,
  perhaps: (seconds, riseDb) => `quizá a los ${seconds}\u00a0s, subida ${riseDb}\u00a0dB`,
};
