import { fixed } from '../../numbers.ts';
import type { LaterWords } from '../../catalogue.ts';

export const check: LaterWords['check'] = {
  ways: 'Comprobaciones',
  sound: 'Entrada y diapasón',
  gain: 'Ganancia',
  length: 'Una longitud',
  tone: 'Tono reproducido',
  sweep: 'Barrido',
};

export const checkLength: LaterWords['checkLength'] = {
  heading: 'Comprobar una longitud',
  lead: 'La columna se queda como está. Golpea el diapasón y, varias veces, acércalo a la boca y apártalo: esta página dice si esta longitud resuena.',
  begin: 'Empezar la comprobación',
  again: 'Empezar de nuevo',
  end: 'Terminar la comprobación',
  listenFirst: 'Pulsa primero Escuchar.',
};

export const gainCheck: LaterWords['gainCheck'] = {
  name: 'Control de ganancia',
  heading: '¿Hay algo que cambie el nivel?',
  lead: 'Los sistemas hechos para llamadas cambian el volumen por sí solos y quitan los sonidos que no son voz, sobre todo los diapasones. En una sala silenciosa no se nota.',
  browserSays: 'Lo que dice el navegador',
  steps: [
    'Fija la columna y el micrófono.',
    'Golpea el diapasón una vez contra goma y apoya su mango cerca del micrófono.',
    'No te muevas durante diez segundos mientras alguien habla.',
  ],
  begin: 'Empezar el control de ganancia',
  again: 'Empezar de nuevo',
  end: 'Terminar el control de ganancia',
  listenFirst: 'Escucha primero con el micrófono.',
  help: 'Ayuda con el micrófono, y qué puede hacer el administrador',
  microphone: 'Micrófono',
  systemsChoice: 'El que elige el sistema',
};

export const soundCheck: LaterWords['soundCheck'] = {
  heading: 'Entrada y diapasón',
  lead: 'Pulsa Escuchar, guarda silencio tres segundos, y luego golpea el diapasón y mantenlo lejos del tubo.',
  fork: 'Diapasón',
  use: 'Usar la frecuencia medida en el ajuste',
  used: 'Ahora cuenta la frecuencia medida en el ajuste.',
  caution: 'Golpea el diapasón contra goma o la suela del zapato, nunca contra vidrio o un borde duro.',
  usePractice: {
    heading: '¿Usar la frecuencia del diapasón de práctica?',
    message:
      'Lo que se oyó es el diapasón de práctica. Su frecuencia contaría para el diapasón de este experimento, también para las marcas hechas con uno de verdad.',
    no: 'Dejar el diapasón como está',
    yes: 'Usarla',
  },
};

export const tone: LaterWords['tone'] = {
  heading: 'Tono reproducido',
  lead: 'En lugar de un diapasón: un tono sinusoidal constante de un altavoz puesto en la boca de la columna.',
  pitch: 'Frecuencia del tono',
  loudness: 'Volumen',
  loudnessNow: (percent) => `${percent}\u00a0% del límite`,
  play: 'Reproducir el tono',
  stop: 'Parar el tono',
  mute: 'Un móvil o una tableta en silencio no reproduce nada: desactiva primero el modo de silencio.',
  cannotPlay:
    'El tono no se puede reproducir aquí. Comprueba que hay un altavoz conectado y que ningún otro programa lo ocupa, y prueba otra vez; si no sirve, recarga la página.',
  caution:
    'El tono empieza bajo y no pasa de un límite. Baja primero el volumen del aparato, y no lo reproduzcas nunca por unos auriculares que alguien lleve puestos.',
};

export const sweepCard: LaterWords['sweepCard'] = {
  heading: 'Barrido con la columna fija',
  lead: 'La longitud no cambia; la frecuencia de un tono reproducido sube despacio y vuelve a bajar. Donde suena más fuerte tanto al subir como al bajar, la columna resuena.',
  length: 'Longitud de la columna',
  lengthField: 'Longitud de la columna del barrido',
  from: 'Barrer desde',
  to: 'Barrer hasta',
  practice: 'Práctica: simulado, sin sonido',
  start: 'Empezar el barrido',
  cancel: 'Cancelar el barrido',
  takes: (durationS) => `dura ${fixed(durationS, 0)}\u00a0s`,
  takesUnknown: 'dura —',
  sweeping: 'Barriendo',
  soFar: 'Lo que se ha oído hasta ahora. Una resonancia se ve como una colina, al subir y al bajar.',
  noLength: 'Escribe primero la longitud de la columna.',
  noResonance:
    'No se oyó ninguna resonancia de esta columna tanto al subir como al bajar. Acerca el altavoz y el micrófono a la boca, o amplía el barrido.',
  order: 'Orden',
  resonance: 'Resonancia',
  speed: 'Velocidad obtenida',
  note: 'Añadir a las notas',
  noted: 'El resultado del barrido está ahora en las notas, en Archivo.',
  doubts: '¿Se puede confiar en este barrido?',
  inDoubt: 'En duda.',
  notProven: 'Aún sin comprobar.',
  caution:
    'El altavoz va en la boca de la columna, el micrófono a su lado. El tono empieza bajo y no pasa de un límite. Baja primero el volumen del aparato, y no lo reproduzcas nunca por unos auriculares que alguien lleve puestos.',
};
