import type { FirstWords } from '../catalogue.ts';
import { counted, plural } from './grammar.ts';

/** "1 resonancia encontrada", "2 resonancias encontradas". */
const resonancesFound = (count: number): string =>
  counted(count, 'resonancia encontrada', 'resonancias encontradas');

/** What may be resonances, beside those that surely are. */
const andMaybes = (count: number): string =>
  `y ${counted(count, 'más que puede serlo', 'más que pueden serlo')}`;

export const notice: FirstWords['notice'] = {
  undone: (step) => `Deshecho: ${step}.`,
  redone: (step) => `Rehecho: ${step}.`,
  markDeleted: 'Marca borrada. Puedes recuperarla debajo de la lista.',
  resonanceFound: (waiting) =>
    plural(
      waiting,
      'Resonancia encontrada: escribe su longitud.',
      `Resonancia encontrada: faltan ${waiting} longitudes por escribir.`,
    ),
  resonanceMaybe: (percent) =>
    `Quizá una resonancia, segura al ${percent}\u00a0%. Desliza otra vez por ella, o pulsa K para conservarla si tú también la has oído.`,
  resonanceAgain: (mark) => `La misma resonancia otra vez: cuenta junto con la marca ${mark}.`,
  resonanceJoined: (mark) =>
    `Resonancia encontrada: unida a la marca ${mark}. Si es otra resonancia, elige «Separar» en la lista de marcas.`,
  notMarked:
    'Se oyó una resonancia, pero no se marcó: el sonido se cortó en ella. Todavía puedes marcarla, debajo de «¿Se puede confiar en el nivel?».',
  gainCheckPassed:
    'Control de ganancia: sin cambios. El diapasón se apagó con regularidad mientras hablabais. Guardado con el experimento.',
  gainCheckFailed:
    'Control de ganancia: con cambios. Algo cambia el nivel. Mientras no se arregle, las marcas nuevas quedan en duda.',
  noneInRecording: 'No se encontró ninguna resonancia en esta grabación.',
  foundInRecording: (resonances) => `${resonancesFound(resonances)} en la grabación.`,
  foundToType: (resonances) => `${resonancesFound(resonances)} en la grabación. Escribe las longitudes.`,
  maybesInRecording: (resonances, maybes) =>
    `${resonancesFound(resonances)} en la grabación, ${andMaybes(maybes)}.`,
  maybesToType: (resonances, maybes) =>
    `${resonancesFound(resonances)} en la grabación, ${andMaybes(maybes)}. Escribe las longitudes.`,
  onlyMaybes: (maybes) =>
    `En la grabación no hay ninguna resonancia segura, pero ${counted(maybes, 'momento puede serlo', 'momentos pueden serlo')}.`,
  recordingHeardAgain: 'La grabación se analiza otra vez, desde el principio, para este diapasón.',
  strikeVoid: 'Ese golpe se interrumpió y no cuenta: golpea el diapasón otra vez.',
  openElsewhere:
    'Este experimento está abierto en otra pestaña. Trabaja en él aquí o abre una copia: los botones están arriba en la página.',
  busyElsewhere: 'Este experimento está abierto en otra pestaña: ciérralo allí primero.',
  takenElsewhere: 'Ahora trabajas en este experimento en otra pestaña. Esta solo lo muestra.',
  storeErased:
    'Se ha borrado todo lo guardado en este navegador. El experimento abierto vuelve a estar guardado. Los demás experimentos y el sonido guardado ya no están en este dispositivo.',
  lastUnreadable: (why) =>
    `El último experimento no se pudo leer: ${why} Está guardado tal como está, en Archivo.`,
  changesNotSaved: (title, why) => `Los últimos cambios de «${title}» no se han guardado: ${why}`,
  notOpened: (why) => `Este experimento no se puede abrir: ${why}`,
  notDuplicated: (why) => `Este experimento no se puede copiar: ${why}`,
  copyOpen: (title) => `Ahora trabajas en «${title}». El original sigue en la lista.`,
  lessonOpen: 'La clase está preparada. Tu experimento anterior está guardado en la lista de Archivo.',
  lessonAgain:
    'Ya empezaste esta clase aquí: está abierta como la dejaste. Para otro grupo, elige «Nuevo, mismo montaje» en Archivo.',
  lessonWithout: (forks, lowestHz, highestHz) =>
    `La clase está preparada, pero sin estos diapasones: ${forks}. Esta página oye diapasones de ${lowestHz} a ${highestHz}\u00a0Hz.`,
  lessonRevealed: (experiments) =>
    `${counted(experiments, 'experimento de esta clase lo muestra', 'experimentos de esta clase lo muestran')} todo ahora.`,
  noSuchCode:
    'Este código no abre ninguna clase en este dispositivo. Escríbelo exactamente como te lo dio tu profesor.',
  experimentDeleted: 'Experimento borrado. Puedes recuperarlo debajo de la lista.',
  soundNowhere: 'El sonido no se puede guardar: ahora este navegador no guarda nada para esta página.',
  soundLimit:
    'No queda espacio para más sonido, así que se ha dejado de guardar. Guarda una parte en archivos y bórrala aquí (Archivo).',
  soundStopped: (why) => `Se ha dejado de guardar el sonido. ${why}`,
};
