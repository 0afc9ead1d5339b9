import type { LaterWords } from '../../catalogue.ts';
import { counted } from '../grammar.ts';

export const classPage: LaterWords['classPage'] = {
  heading: 'Clase',
  lead: 'Suelta aquí los archivos de los grupos (JSON o CSV, cuantos quieras) o pega una tabla: de marcas con una columna group, o de resultados con las columnas group, speed_mps y standard_uncertainty_mps. O lee los códigos de las pantallas de los grupos. Todo se queda en este dispositivo hasta que vacíes la vista Clase. No se envía nada.',
  back: 'Volver a Archivo',
  print: 'Imprimir el resumen',
  saveCsv: 'Guardar clase como CSV',
  saveJson: 'Guardar clase como JSON',
  copy: 'Copiar tabla',
  copied: 'La tabla de la clase está copiada, lista para pegar.',
  empty: 'Vaciar la vista Clase',
  discuss: 'Para discutir',
  groups: 'Grupos',
  table: 'Tabla de grupos',
  use: 'Cuenta',
  group: 'Grupo',
  speed: 'm/s (95\u00a0%)',
  marks: 'Marcas',
  remarks: 'Observaciones',
  groupInFile: (name, fileName) => `${name}, ${fileName}`,
  count: (group) => `Contar ${group}`,
};

export const codeTaken: LaterWords['codeTaken'] = {
  notACode: 'Este código no contiene el resultado de ningún grupo.',
  part: (have, of) => `Códigos leídos de este grupo: ${have} de ${of}. Muestra el siguiente.`,
  new: (group) => `Añadido: «${group}».`,
  there: (group) => `Ya estaba, sin cambios: «${group}».`,
  newer: (group) => `Ya estaba: «${group}». Esta versión es más nueva y cuenta en su lugar.`,
  older: (group) => `Ya estaba: «${group}». Esta versión no es más nueva y no cuenta.`,
  inTable: (rows) => `La tabla de grupos tiene ${counted(rows, 'fila', 'filas')}.`,
};

export const camera: LaterWords['camera'] = {
  start: 'Leer códigos con la cámara',
  stop: 'Parar la cámara',
  lead: 'Pon el código de un grupo delante de la cámara. Las imágenes no se guardan.',
  none: 'Este navegador no da a la página ninguna cámara. Lee el código con un móvil o una tableta, o abre aquí el enlace del grupo.',
  refused:
    'Esta página no tiene permiso para usar la cámara. Permítela junto a la dirección, o abre aquí el enlace del grupo.',
  busy: 'La cámara no se enciende. Quizá la esté usando otro programa.',
  picture: 'Lo que ve la cámara',
};
