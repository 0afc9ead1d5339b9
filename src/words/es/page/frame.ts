import type { FirstWords } from '../../catalogue.ts';
import { counted, plural } from '../grammar.ts';

export const frame: FirstWords['frame'] = {
  heading: 'Banco de columna de aire',
  views: 'Vistas',
  viewNames: {
    measure: 'Medir',
    apparatus: 'Montaje',
    check: 'Comprobar',
    working: 'Cálculos',
    compare: 'Comparar',
    records: 'Archivo',
  },
  keys: 'Teclas',
  language: 'Idioma',
  languageNotLoaded:
    'Este idioma no se ha podido cargar, así que la página sigue en el actual. Prueba otra vez cuando tengas conexión.',
  theme: 'Tema',
  themeNames: { system: 'auto', light: 'claro', dark: 'oscuro' },
  drop: 'Suelta para abrir',
  groupsTaken: (count) => `${counted(count, 'grupo añadido', 'grupos añadidos')} a la vista Clase.`,
  close: 'Cerrar',
  doubts: (count) => counted(count, 'aviso', 'avisos'),
  lengthsToType: (count) => plural(count, 'Escribe una longitud', `Escribe ${count} longitudes`),
  saved: { nothing: '', saved: 'Guardado', saving: 'Guardando…', refused: 'Sin guardar en este dispositivo' },
};

export const failed: FirstWords['failed'] = {
  heading: (part) =>
    part === null ? 'Esta parte de la página ha fallado.' : `Esta parte de la página ha fallado: ${part}.`,
  detail:
    'Todo lo demás sigue funcionando. Prueba otra vez. Si falló justo después de tu último paso, deshazlo. El archivo del experimento se puede guardar en cualquier caso.',
  again: 'Probar otra vez',
  undo: 'Deshacer el último paso',
  save: 'Guardar el archivo del experimento',
};
