import type { FirstWords } from '../catalogue.ts';

export const waitsFor: FirstWords['waitsFor'] = {
  permission:
    'El navegador pregunta si esta página puede usar el micrófono: mira junto a la dirección y elige «Permitir».',
};

export const hold: FirstWords['hold'] = {
  muted:
    'El micrófono está silenciado, por un interruptor o por el sistema. Actívalo: la escucha sigue por sí sola.',
  suspended:
    'El navegador ha puesto el sonido en pausa (una llamada, una página oculta, el reposo). Vuelve a la página o empieza de nuevo.',
  frozen: 'Desde hace dos segundos no llega sonido del micrófono. Si no vuelve, empieza de nuevo.',
};

export const noSound: FirstWords['noSound'] =
  'No llega ningún sonido del micrófono. Busca en él un interruptor o una tecla de silencio, o elige otro en Comprobar.';

export const captureFailure: FirstWords['captureFailure'] = {
  withoutMicrophone: (advice) =>
    `${advice} Todo lo demás funciona sin él: escribe longitudes a mano, abre una grabación o usa la columna de práctica.`,
  'recording-broken': {
    what: 'No se pudo analizar la grabación hasta el final.',
    advice: 'Ábrela otra vez; si no sirve, guárdala como WAV y abre ese archivo.',
  },
  'listening-broken': {
    what: 'La página no pudo empezar a escuchar, o se interrumpió.',
    advice: 'Empieza de nuevo; si no sirve, revisa la conexión y vuelve a cargar la página.',
  },
  'audio-broken': {
    what: 'El audio del navegador dejó de funcionar.',
    advice: 'Lo encontrado antes se conserva. Empieza de nuevo; si vuelve a pasar, recarga la página.',
  },
  'insecure-context': {
    what: 'El navegador solo da el micrófono a páginas con una dirección segura.',
    advice: 'Abre esta página con https:// (o en localhost).',
  },
  framed: {
    what: 'Esta página está incrustada en otra, que le niega el micrófono.',
    advice: 'Ábrela en su propia pestaña y empieza de nuevo.',
  },
  'permission-withdrawn': {
    what: 'Se retiró el permiso para el micrófono.',
    advice:
      'Lo encontrado antes se conserva. Pulsa el icono junto a la dirección, vuelve a permitir el micrófono y empieza de nuevo.',
  },
  'microphone-busy': {
    what: 'No se puede abrir el micrófono: quizá lo usa otro programa u otra pestaña.',
    advice: 'Ciérralo (una llamada, una grabadora) y empieza de nuevo.',
  },
  'microphone-lost': {
    what: 'El micrófono se ha desconectado o apagado.',
    advice: 'Lo encontrado antes se conserva. Conéctalo y empieza de nuevo.',
  },
  'uneven-sound': {
    what: 'El sonido llega más rápido o más despacio de lo que indica el navegador, o el ordenador no da abasto: los tiempos y las frecuencias serían falsos.',
    advice:
      'Lo encontrado antes se conserva. Cierra otros programas, desconecta y conecta el micrófono y empieza de nuevo.',
  },
  closed: {
    what: 'La pregunta sobre el micrófono se cerró sin respuesta.',
    advice: 'Empieza de nuevo y elige «Permitir».',
  },
  refused: {
    what: 'Se denegó el permiso para el micrófono.',
    advice:
      'Pulsa el icono junto a la dirección, permite el micrófono para esta página y empieza de nuevo. Si no hay nada que permitir, lo ha desactivado el administrador del centro.',
  },
  system: {
    what: 'Los ajustes de privacidad del ordenador niegan el micrófono al navegador.',
    advice: 'Permítelo allí (privacidad, micrófono) y empieza de nuevo.',
  },
  policy: {
    what: 'Una norma de este sitio o del centro niega el micrófono a las páginas.',
    advice: 'Pide al administrador que lo permita.',
  },
  'none-given': {
    what: 'Este navegador no deja que las páginas web usen un micrófono.',
    advice: 'Usa una versión actual de Chrome, Edge, Firefox o Safari.',
  },
  'none-found': {
    what: 'No se encontró ningún micrófono.',
    advice: 'Conecta o enciende uno y empieza de nuevo.',
  },
  'not-there': {
    what: 'El micrófono elegido ya no está.',
    advice: 'Elige otro y empieza de nuevo.',
  },
};
