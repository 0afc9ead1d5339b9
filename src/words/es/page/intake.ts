import type { LaterWords } from '../../catalogue.ts';
import { megabytes } from '../../numbers.ts';
import { counted } from '../grammar.ts';

export const intakePage: LaterWords['intakePage'] = {
  heading: 'Lo que ha llegado',
  files: 'Archivos',
  toClass: 'Llevar a la vista Clase',
  add: 'Añadir a este experimento',
  openOne: 'Abrir como experimento nuevo',
  openEach: 'Abrir cada uno como experimento',
  listen: 'Escuchar las grabaciones',
  cancel: 'Cancelar',
  close: 'Cerrar sin cambiar nada',
  tooMany: (files, most) => `${files} archivos a la vez son demasiados: se pueden ${most}.`,
  tooLarge: (mostBytes) => `Estos archivos juntos pasan de ${megabytes(mostBytes)}: ábrelos por partes.`,
  opened: (title) =>
    `«${title}» está abierto. Lo que estaba abierto antes está en la lista de Archivo, o un paso atrás con «Deshacer».`,
  leftClosed: (files) => `${files} archivos no se abrieron.`,
};

export const intakeContent: LaterWords['intakeContent'] = {
  experiment: (title, marks) => `experimento «${title}», ${counted(marks, 'marca', 'marcas')}`,
  table: (rows) => `tabla, ${counted(rows, 'fila', 'filas')} de marcas`,
  results: (results) => `tabla, ${counted(results, 'resultado', 'resultados')}`,
  recording: 'grabación',
  whole: (content) => `${content}.`,
  inPart: (content, faults) => `${content}; ${counted(faults, 'error', 'errores')}.`,
  unusable: 'no se puede usar.',
  ask: (content) => `Usar solo la parte sin errores: ${content}`,
  inRow: (row, message) => `fila ${row}: ${message}`,
  inField: (field, message) => `${field}: ${message}`,
  inRowAndField: (row, field, message) => `fila ${row}, ${field}: ${message}`,
  more: (faults) => `y ${faults} más.`,
};

export const usableFiles: LaterWords['usableFiles'] = {
  all: (files) => `Los ${files} archivos se pueden usar.`,
  some: (usable, files) => `Archivos que se pueden usar: ${usable} de ${files}. Lo que está mal va primero.`,
  inPart: (usable, files, inPart) =>
    `Archivos que se pueden usar: ${usable} de ${files}, ${inPart} de ellos en parte. Lo que está mal va primero.`,
};

export const takenTable: LaterWords['takenTable'] = {
  opened: (title) =>
    `«${title}» está abierto como experimento nuevo. Lo que estaba abierto antes está en la lista de Archivo.`,
  added: (marks) => `${counted(marks, 'marca añadida', 'marcas añadidas')}; «Deshacer» lo quita.`,
  leftOut: (rows, why) => `${counted(rows, 'fila no se tomó', 'filas no se tomaron')}: ${why}`,
  nothing: (why) => `No se pudo usar ninguna fila de la tabla. ${why}`,
  nothingOf: (title, why) => `No se pudo usar ninguna fila de ${title}. ${why}`,
  unknownRow: (message) => `fila ?: ${message}`,
};
