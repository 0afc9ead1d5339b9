import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const recordFault: FirstWords['recordFault'] = {
  at: (path, what) => `${path}: ${what}`,
  mustBe: {
    object: (found) => `debe ser un objeto; aquí pone: ${found}.`,
    'whole-number': (found) => `debe ser un número entero; aquí pone: ${found}.`,
    flag: (found) => `debe ser true o false; aquí pone: ${found}.`,
    text: (found, longest) => `debe ser un texto de ${longest} caracteres como máximo; aquí pone: ${found}.`,
    list: (found, longest) =>
      `debe ser una lista de ${counted(longest, 'elemento', 'elementos')} como máximo; aquí pone: ${found}.`,
    number: (found, lowest, highest) => `debe ser un número de ${lowest} a ${highest}; aquí pone: ${found}.`,
    choice: (found, choices) => `debe ser uno de estos: ${choices}; aquí pone: ${found}.`,
    reading: (found, lowest, highest, zeroOffset) =>
      `debe ser de ${lowest} a ${highest}, para que el desfase del cero de ${zeroOffset} deje una columna; aquí pone: ${found}.`,
  },
  unequalLists: (one, other) => `debe tener en ${one} tantos valores como en ${other}.`,
  sameId: {
    forks: 'forks: dos diapasones tienen el mismo id.',
    places: 'places: dos lugares tienen el mismo id.',
    marks: 'marks: dos marcas tienen el mismo id.',
  },
  ofMark: {
    fork: (markId, id) => `marca ${markId}: en este archivo no hay ningún diapasón «${id}».`,
    place: (markId, id) => `marca ${markId}: en este archivo no hay ningún lugar «${id}».`,
  },
  ofPresent: {
    fork: (id) => `present: en este archivo no hay ningún diapasón «${id}».`,
    place: (id) => `present: en este archivo no hay ningún lugar «${id}».`,
  },
  noObject: 'Esto no es un experimento: se espera un objeto JSON.',
  newerVersion: (version, newest) =>
    `Esto lo hizo una versión más nueva de esta página (schemaVersion es ${version}; esta lee hasta ${newest}). Recarga la página para actualizarla y ábrelo otra vez.`,
  noVersion: (found, newest) =>
    `schemaVersion debe ser un número entero de 1 a ${newest}; aquí pone: ${found}. Quizá sea un archivo de otro programa.`,
  unreadable: (said) => `Esto no se puede leer (${said}).`,
};
