import type { LaterWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const tableFault: LaterWords['tableFault'] = {
  cell: (number) => `celda ${number}`,
  noText: 'No es un archivo de texto. Guarda la tabla como CSV, no como hoja de cálculo.',
  noContent: 'El archivo está vacío.',
  noHeading: 'El archivo no tiene fila de encabezados.',
  noRows: 'El archivo tiene encabezados, pero ninguna fila de marcas.',
  allExcluded: 'Todas las filas de marcas están excluidas (excluded).',
  columnTwice: 'la columna aparece más de una vez. Borra una o cámbiale el nombre.',
  quotes: {
    unclosed: 'unas comillas (") se abren y no se cierran. Ciérralas o bórralas.',
    'text-behind':
      'hay texto después de unas comillas de cierre ("). Ponlo dentro de las comillas o bórralas.',
    stray: 'hay unas comillas sueltas (") dentro de la celda. Bórralas.',
  },
  manyRows: (rows, most) =>
    `El archivo tiene ${counted(rows, 'fila', 'filas')}; se admiten ${most} como máximo. Repártelo en varios archivos.`,
  manyCells: (cells, headings) =>
    `hay ${counted(cells, 'celda', 'celdas')} bajo ${counted(headings, 'encabezado', 'encabezados')}.`,
  decimalCommas: 'Con comas decimales, pon punto y coma entre las celdas, o las celdas entre comillas.',
  noneOf: (needed, found) => `en los encabezados faltan todas las columnas ${needed}. Pone: ${found}.`,
  putDelimiters:
    'Pon comas, puntos y comas o tabuladores entre las celdas, y ningún título encima de los encabezados (o que empiece con #).',
  putHeading: 'Pon encabezados arriba.',
  missing: (found, needed) => `falta la columna. Los encabezados son: ${found}. Se necesitan: ${needed}.`,
  severalMissing: (found, needed) =>
    `faltan estas columnas. Los encabezados son: ${found}. Se necesitan: ${needed}.`,
  meant: (heading, column) => `Si es «${heading}», llámala ${column}.`,
  plainLengths:
    'Las longitudes sin unidad están en cm; una celda puede llevar su propia unidad, como 158\u00a0mm.',
};
