import { fixed } from '../../numbers.ts';
import type { FirstWords } from '../../catalogue.ts';

export const capture: FirstWords['capture'] = {
  ended: 'Escucha terminada',
  notListening: 'No se escucha.',
  held: 'Escucha en pausa',
  paused: 'En pausa.',
  again: 'Empezar de nuevo',
  ownTab: 'Abrir en su pestaña',
  help: 'Ayuda con el micrófono',
};

export const processingFlag: FirstWords['processingFlag'] = {
  on: 'activado',
  off: 'desactivado',
  unknown: 'se desconoce',
};

export const trustPart: FirstWords['trustPart'] = {
  name: '¿Se puede confiar en el nivel?',
  doubtful: 'El nivel está en duda.',
  unproven: 'Aún sin comprobar.',
  withheld: (flags) =>
    `Oídas pero sin marca: ${flags}. El sonido se cortó en la pasada, como cuando una supresión de ruido quita el tono: quizá no era una resonancia.`,
  flag: (timeS, riseDb) => `a los ${fixed(timeS, 1)} s, subida ${fixed(riseDb, 0)} dB`,
  maybes:
    'Quizá una resonancia. Pasa otra vez por ella: si se oye de nuevo, se convierte en marca. O consérvala, si tú también la has oído.',
  maybe: (timeS, probability, reason) =>
    `○ a los ${fixed(timeS, 1)} s, segura al ${fixed(100 * probability, 0)} %: ${reason}`,
  keep: 'Conservar',
  keepNamed: (timeS) => `Conservar la resonancia a los ${fixed(timeS, 1)} s`,
  letIn: 'Marcar igualmente',
  letInNamed: (flag) => `Marcar la resonancia ${flag}`,
  letAllIn: 'Marcarlas todas',
  toCheck: 'Ir al control de ganancia',
};
