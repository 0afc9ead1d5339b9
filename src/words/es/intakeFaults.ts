import type { LaterWords } from '../catalogue.ts';
import { fullCentimetres, fullMillimetres, megabytes } from '../numbers.ts';

export const pastedName: LaterWords['pastedName'] = 'Texto pegado';

export const otherFile: LaterWords['otherFile'] = {
  archive:
    'Es un archivo de hoja de cálculo o un archivo ZIP, que esta página no abre. Guárdalo como CSV en su programa y abre ese CSV.',
  oldDocument:
    'Es una hoja de cálculo o un documento antiguo. Guárdalo como CSV en su programa y abre ese CSV.',
  compressed: 'Este archivo está comprimido. Descomprímelo primero.',
  pdf: 'Es un PDF. De él no se pueden leer números: abre la tabla de la que salió.',
  picture: 'Es una imagen. De ella no se pueden leer números.',
};

export const intakeFault: LaterWords['intakeFault'] = {
  empty: 'El archivo está vacío.',
  largeExperiment: (bytes, mostBytes) =>
    `El archivo tiene ${megabytes(bytes)}; un experimento tiene ${megabytes(mostBytes)} como máximo.`,
  largeTable: (bytes, mostBytes) =>
    `El archivo tiene ${megabytes(bytes)}; una tabla de marcas tiene ${megabytes(mostBytes)} como máximo.`,
  unreadable: 'No se puede leer el archivo. Si se movió o se cambió, elígelo otra vez.',
  longPaste: (millions) =>
    `El texto tiene ${millions} millones de caracteres: ninguna tabla de marcas es tan larga.`,
  nested: 'El archivo está mucho más anidado que un experimento: es otra cosa.',
  noJson: (said) => `El archivo no es un JSON completo (${said}). Guárdalo otra vez en esta página.`,
  classResult:
    'Es el resultado de una clase entera: no contiene marcas. Abre los archivos de los grupos, o el archivo CSV de la clase.',
  noResults: 'La tabla tiene encabezados, pero ningún resultado.',
  noUncertainty:
    'hace falta una columna standard_uncertainty_mps o expanded_uncertainty_mps (95\u00a0%): sin ella los resultados no se pueden ponderar.',
  noSpeed: (lowestMps, highestMps, typed) =>
    `debe ser de ${lowestMps} a ${highestMps}\u00a0m/s, no ${typed}. Revisa el número y su unidad.`,
  recordFull: (mostBytes) =>
    `con esta fila el archivo del experimento pasaría de ${megabytes(mostBytes)}. Empieza otro para el resto, o acorta las notas.`,
  listFull: (most) =>
    `un experimento tiene ${most} marcas, diapasones o lugares como máximo. Empieza otro para el resto.`,
  badOrder: (order, { lowest, highest }) =>
    `el orden debe ser de ${lowest} a ${highest}, no ${order}. Déjalo vacío si no lo sabes.`,
  otherTube: (diameterM, ownDiameterM) =>
    `este tubo tiene ${fullMillimetres(diameterM)}\u00a0mm de diámetro, el del experimento ${fullMillimetres(ownDiameterM)}\u00a0mm. Otro tubo es otro experimento.`,
  otherMouth: (mouth, ownMouth) =>
    `esta boca es ${mouth}, la del experimento ${ownMouth}. Otro tubo es otro experimento.`,
  noReading: (zeroOffsetM, columnM, { lowest, highest }) =>
    `con el desfase del cero de la regla de ${fullCentimetres(zeroOffsetM)}\u00a0cm, una columna de ${fullCentimetres(columnM)}\u00a0cm se leería en ${fullCentimetres(columnM + zeroOffsetM)}\u00a0cm; las lecturas van de ${fullCentimetres(lowest)}\u00a0cm a ${fullCentimetres(highest)}\u00a0cm. Abre la tabla como experimento nuevo, o cambia primero el desfase del cero en Montaje.`,
};

export const intakeRemark: LaterWords['intakeRemark'] = {
  notRead: (headings) => `Estas columnas no se leen: ${headings}.`,
  skipped: (rows) => `Estas filas están excluidas (excluded) y no se pueden leer: ${rows}.`,
  mendFile:
    'Corrige estos campos en el archivo, o guárdalo otra vez desde esta página; después ábrelo de nuevo.',
  goodPart:
    'En la parte sin errores falta lo que se nombra aquí; los números que no se tomaron están en su nota.',
  widestTaken: (widestM) =>
    `Las longitudes tienen incertidumbres distintas (la habitual donde no se indica): se toma la mayor, ${fullMillimetres(widestM)}\u00a0mm, para todas.`,
  offsetPutBack: (zeroOffsetM) =>
    `Las longitudes de la tabla se toman como longitudes de la columna: se vuelve a sumar el desfase del cero de la regla, ${fullMillimetres(zeroOffsetM)}\u00a0mm.`,
};
