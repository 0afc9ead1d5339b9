import type { FirstWords } from '../../catalogue.ts';
import { ordinal, plural } from '../grammar.ts';

export const marks: FirstWords['marks'] = {
  heading: 'Marcas',
  undo: (step) => (step === null ? 'Deshacer' : `Deshacer: ${step}`),
  redo: 'Rehacer',
  newMark: 'Marca nueva',
  newLength: 'Longitud de una marca nueva',
  add: 'Añadir marca',
  waiting: (count) =>
    plural(
      count,
      'Falta la longitud de 1 marca. Escríbela y pulsa Intro.',
      `Faltan las longitudes de ${count} marcas. Escribe una y pulsa Intro para pasar a la siguiente.`,
    ),
  none: 'Todavía no hay marcas. Cada resonancia encontrada pone una. También puedes pulsar M, o escribir una longitud encima del tubo.',
  deleted: (count) => `Marcas borradas (${count})`,
  bringBack: 'Recuperar',
  atLength: (centimetres) => `a ${centimetres}\u00a0cm`,
  bringBackAtLength: (centimetres) => `Recuperar la marca a ${centimetres}\u00a0cm`,
  withoutLength: 'sin longitud',
  bringBackWithoutLength: 'Recuperar la marca sin longitud',
};

export const markRow: FirstWords['markRow'] = {
  mark: (number) => `Marca ${number}`,
  length: (number) => `Longitud de la marca ${number}`,
  waits: 'escribe su longitud',
  overTube: 'Escríbela encima del tubo',
  choose: 'Cambiar',
  chooseNamed: (number) => `Cambiar la marca ${number}`,
  fork: (number) => `Diapasón de la marca ${number}`,
  column: (number) => `Columna de la marca ${number}`,
  place: (number) => `Lugar de la marca ${number}`,
  alsoChange: (count) =>
    plural(
      count,
      'Cambiar también la otra marca del mismo tipo',
      `Cambiar también las otras ${count} marcas del mismo tipo`,
    ),
  unsure: (percent) =>
    `Resonancia segura solo al ${percent}\u00a0%: desliza otra vez por ella antes de fiarte.`,
  pass: (strike, pass) => `golpe ${strike}, ${ordinal(pass)} pasada`,
  untested: (missing) =>
    missing === 1 ? 'otra resonancia la pondría a prueba' : 'otras dos resonancias la pondrían a prueba',
  notSolved: 'aún sin calcular',
  leftOut: 'excluida',
  outlier: (cause) => `Valor atípico: ${cause}`,
  order: (number) => `Orden de la marca ${number}`,
  autoOrder: 'orden: auto',
  ordinal: (order) => ordinal(order),
  locatedBy: (number) => `Cómo se encontró la longitud de la marca ${number}`,
  atCentre: 'en el centro',
  atLoudest: 'en la posición más sonora',
  leaveOut: 'Excluir',
  leaveOutNamed: (number) => `Excluir la marca ${number} del ajuste`,
  delete: 'Borrar',
  deleteNamed: (number) => `Borrar la marca ${number}`,
  again: (evidence) => `Repetición: ${evidence}`,
  separate: 'Separar',
  separateNamed: (number) => `Separar la repetición de la marca ${number}`,
  sameAsOther: 'La misma que…',
  sameAsNamed: (number) => `Marca con la misma resonancia que la marca ${number}`,
  same: (number) => `La misma que ${number}`,
  sameNamed: (number, other) => `La marca ${number} es la misma resonancia que la marca ${other}`,
};

export const result: FirstWords['result'] = {
  region: 'Velocidad del sonido',
  heading: 'Detalles del resultado',
  spoken: (speed) => `Velocidad del sonido: ${speed}.`,
  none: '—',
  unit: 'm/s',
};

export const doubts: FirstWords['doubts'] = { heading: 'Avisos' };
