import type { FirstWords } from '../../catalogue.ts';

export const stageLine: FirstWords['stageLine'] = {
  waiting: 'Esperando el sonido…',
  tooFast: 'Demasiado rápido: ha pasado una resonancia.',
  roomNoise: 'Midiendo el ruido de la sala: guarda silencio.',
  listenFirst: 'Pulsa Escuchar. Así quedan las dos manos libres para el diapasón y el tubo.',
  openRecording: 'Abre una grabación del diapasón sobre la columna.',
  over: 'La grabación ha terminado.',
  overTypeLengths: 'La grabación ha terminado. Escribe las longitudes de las marcas.',
  strike: 'Escuchando. Golpea el diapasón y mantenlo en la boca del tubo.',
  slide: 'Se oye el diapasón: desliza despacio.',
  perhaps: 'Quizá una resonancia: pasa otra vez por ella.',
  marked: 'Resonancia marcada. Vuelve para leerla, o sigue deslizando.',
};
