import type { FirstWords } from '../../catalogue.ts';
import { plural } from '../grammar.ts';

export const source: FirstWords['source'] = {
  legend: 'Fuente de sonido',
  names: { practice: 'Práctica', microphone: 'Micrófono', recording: 'Grabación' },
  listen: 'Escuchar',
  stop: 'Parar',
  open: 'Abrir una grabación',
  file: 'Grabación que se abre',
  progress: 'Escuchando la grabación',
  rate: (kilohertz, processing) => `${kilohertz}\u00a0kHz, ${processing}`,
  processing: {
    on: 'cambiado por el navegador',
    unknown: 'quizá cambiado por el navegador',
    off: 'sin cambios del navegador',
  },
};

export const now: FirstWords['now'] = {
  legend: 'Se mide ahora',
  fork: 'Diapasón',
  hertz: (frequency) => `${frequency}\u00a0Hz`,
  addFork: 'Añadir un diapasón…',
  alsoChange: (marks) =>
    plural(
      marks,
      'Cambiar también la marca hecha hasta ahora',
      `Cambiar también las ${marks} marcas hechas hasta ahora`,
    ),
  column: 'Columna',
  place: 'Lugar',
};

export const drawn: FirstWords['drawn'] = {
  wave: 'Onda',
  waveNamed: 'Onda dibujada',
  waves: { pressure: 'presión', displacement: 'desplazamiento', none: 'nada' },
  expected: 'Longitudes esperadas',
};

export const readout: FirstWords['readout'] = {
  none: '–',
  unit: 'dB sobre la sala',
  noneSpoken: 'Subida sobre la sala: no se oye ningún tono',
  levelSpoken: (riseDb) => `Subida sobre la sala: ${riseDb} decibelios`,
  check: (sign, verdict) => `Esta longitud: ${sign} ${verdict}`,
};

export const wayBack: FirstWords['wayBack'] = {
  idle: 'Volver a la resonancia',
  here: 'Aquí.',
  holdStill: 'No lo muevas y lee la regla.',
  atMaximum: 'En la posición más sonora.',
  toGo: 'mm por recorrer',
  hereLarge: 'Aquí',
  nothingToGo: 'lee la regla',
  moves: {
    piston: { tooLong: 'empuja', tooShort: 'tira' },
    dipped: { tooLong: 'baja el tubo', tooShort: 'sube el tubo' },
    filled: { tooLong: 'sube el agua', tooShort: 'baja el agua' },
  },
  off: (side, move) => `${side}: ${move}`,
  heardAgo: (seconds) => `(hace ${seconds}\u00a0s)`,
  lost: 'No se sabe dónde está. Pasa otra vez por ella y vuelve después desde los dos lados.',
  byLevel: 'Volver a la posición más sonora: pasa por ella desde los dos lados.',
  tooShort: 'demasiado corta',
  tooLong: 'demasiado larga',
  spoken: {
    here: 'Aquí. No lo muevas.',
    atMaximum: 'En la posición más sonora.',
    tooLong: (move) => `Demasiado larga: ${move}.`,
    tooLongBy: (mm, move) => `Sobran ${mm}\u00a0mm: ${move}.`,
    tooShort: (move) => `Demasiado corta: ${move}.`,
    tooShortBy: (mm, move) => `Faltan ${mm}\u00a0mm: ${move}.`,
    lost: 'No se sabe dónde está. Pasa otra vez por ella.',
    close: 'Cerca de la posición más sonora.',
    away: 'Lejos de la posición más sonora.',
  },
};

export const task: FirstWords['task'] = { task: 'Tarea:' };
