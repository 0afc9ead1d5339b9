import type { LaterWords } from '../../catalogue.ts';

export const soundFact: LaterWords['soundFact'] = {
  names: { raw: 'Sonido sin procesar', input: 'Entrada', room: 'Ruido de la sala' },
  raw: {
    'not listening': 'pulsa primero Escuchar',
    'nothing processes': 'sí, nada procesa esta fuente',
    off: 'sí, el navegador no procesa el sonido',
    'not said': 'el navegador no lo dice; haz el control de ganancia',
    'level changed': 'no: el navegador cambia el nivel. Prueba otro navegador u otro micrófono',
  },
  nothingHeard: 'aún no se ha oído nada',
  upTo: (loudestDb) => `hasta ${loudestDb}\u00a0dB (0\u00a0dB: un seno a escala completa)`,
  faint: (loudestDb) => `hasta ${loudestDb}\u00a0dB (0\u00a0dB: un seno a escala completa); muy débil`,
  roomUnheard: 'aún no se ha oído',
  room: (roomDb) => `${roomDb}\u00a0dB a la frecuencia del diapasón`,
};

export const forkFinding: LaterWords['forkFinding'] = {
  none: 'golpéalo para medir su frecuencia real',
  measured: (frequencyHz, uncertaintyHz, offHz, offPercent) =>
    `${frequencyHz} ± ${uncertaintyHz}\u00a0Hz, a ${offHz}\u00a0Hz (${offPercent}\u00a0%) de su valor grabado`,
  withDecay: (measured, decayTimeS) => `${measured}; cae a 1/e en ${decayTimeS}\u00a0s`,
};
