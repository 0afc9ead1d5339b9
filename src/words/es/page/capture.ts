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
  flag: (seconds, riseDb) => `a los ${seconds}\u00a0s, subida ${riseDb}\u00a0dB`,
  maybes:
    'Quizá una resonancia. Pasa otra vez por ella: si se oye de nuevo, se convierte en marca. O consérvala, si tú también la has oído.',
  maybe: (seconds, percent, reason) => `○ a los ${seconds}\u00a0s, segura al ${percent}\u00a0%: ${reason}`,
  keep: 'Conservar',
  keepNamed: (seconds) => `Conservar la resonancia a los ${seconds}\u00a0s`,
  letIn: 'Marcar igualmente',
  letInNamed: (flag) => `Marcar la resonancia ${flag}`,
  letAllIn: 'Marcarlas todas',
  toCheck: 'Ir al control de ganancia',
};
