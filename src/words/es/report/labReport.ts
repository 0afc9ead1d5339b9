import type { LaterWords } from '../../catalogue.ts';
import { dayAndTime } from '../../dates.ts';
import { counted, plural } from '../grammar.ts';

export const report: LaterWords['report'] = {
  title: 'Velocidad del sonido en una columna de aire',
  fileTitle: 'Informe columna de aire',
  dates: (createdAt, changedAt) =>
    `Empezado el ${dayAndTime(createdAt)}, último cambio el ${dayAndTime(changedAt)} (UTC)`,
  names: 'Nombres',
  classAndDate: 'Clase y fecha',
  date: 'Fecha',
  group: (group) => `Grupo: ${group}`,
  className: (name) => `Clase: ${name}`,
  questions: 'Preguntas',
  task: 'Tarea',
  note: 'Nota',
  notWorked: (places) =>
    `Las gráficas, los cálculos y el balance de ${counted(places, 'lugar más', 'lugares más')} no se imprimen. «Cálculos» en la página muestra los del lugar elegido.`,
  cautions: 'Precauciones',
  cautionList: [
    'Golpea el diapasón contra goma o la suela del zapato, nunca contra vidrio o un borde duro.',
    'Mantén el diapasón, cuando vibra, lejos de los dientes y del vidrio.',
    'Un tubo de vidrio se rompe: sujétalo con suavidad. Mantén el agua lejos de los aparatos eléctricos.',
    'Los tonos empiezan bajos. Las normas de tu laboratorio van primero.',
  ],
  discussion: 'Discusión',
};

export const resultPart: LaterWords['resultPart'] = {
  heading: 'Resultado: velocidad del sonido en el aire, fuera del tubo',
  own: 'c = ( ________ ± ________ ) m/s',
  speed: (speed) =>
    speed === null
      ? 'Todavía no se puede dar ninguna velocidad.'
      : `c = (${speed.value} ± ${speed.uncertainty}) m/s`,
  none: 'Todavía no hay ninguna marca con longitud.',
  notPrinted: (places) =>
    `${counted(places, 'lugar más está', 'lugares más están')} en la tabla «Resultado», en Archivo.`,
};

export const placePart: LaterWords['placePart'] = {
  plots: (place) => (place === null ? 'Gráficas' : `Gráficas, ${place}`),
  working: (place) => (place === null ? 'Cálculos' : `Cálculos, ${place}`),
  budget: (place) => (place === null ? 'Balance de incertidumbre' : `Balance de incertidumbre, ${place}`),
  budgetTable: 'Líneas del balance',
};

export const warningsPart: LaterWords['warningsPart'] = {
  heading: 'Avisos',
  none: 'Ninguno.',
  ofPlace: (place, warning) => `${place}: ${warning}`,
  notPrinted: (warnings) => `${counted(warnings, 'aviso más no se imprime', 'avisos más no se imprimen')}.`,
};

export const apparatusPart: LaterWords['apparatusPart'] = {
  heading: 'Montaje',
  fork: 'Diapasón',
  forksLeft: 'Otros diapasones',
  tube: 'Tubo',
  rule: 'Regla',
  air: (place) => `Aire, ${place}`,
  placesLeft: 'Otros lugares',
  left: (count) => `${count}, sin imprimir; están en la tabla «Marcas», en Archivo`,
};

export const apparatusFacts: LaterWords['apparatusFacts'] = {
  stamped: (hz, uncertaintyHz) => `grabado ${hz}\u00a0Hz ± ${uncertaintyHz}\u00a0Hz (incertidumbre típica)`,
  measured: (stampedHz, measuredHz, uncertaintyHz) =>
    `grabado ${stampedHz}\u00a0Hz, medido ${measuredHz} ± ${uncertaintyHz}\u00a0Hz (incertidumbre típica); cuenta la frecuencia medida`,
  noDiameter: 'diámetro interior sin medir',
  diameter: (mm) => `diámetro interior ${mm}\u00a0mm`,
  otherDiameter: (mm) => `${mm}\u00a0mm en el otro extremo abierto`,
  reading: (mm) =>
    `una lectura ± ${mm}\u00a0mm (incertidumbre típica, incluida la de encontrar la resonancia)`,
  readingNotStated: (taken) => `incertidumbre de lectura sin indicar: ${taken}`,
  zeroOffset: (mm) => `desfase del cero ${mm}\u00a0mm`,
  temperature: (celsius, uncertainty) => `${celsius} ± ${uncertainty}\u00a0°C (incertidumbre típica)`,
  noTemperature: 'temperatura sin leer',
  humidity: (percent) => `humedad ${percent}\u00a0%`,
  noHumidity: 'humedad sin leer',
  pressure: (hPa) => `${hPa}\u00a0hPa`,
  noPressure: 'presión sin leer',
  co2: (ppm) => `${ppm}\u00a0ppm de dióxido de carbono`,
};

export const methodPart: LaterWords['methodPart'] = {
  heading: 'Método',
  opening:
    'Se sostiene un diapasón que vibra en la boca de una columna de aire y se cambia la longitud de la columna hasta que resuena: el sonido crece a la frecuencia del diapasón.',
  heard: (heard, marks, where) =>
    `De ${counted(marks, 'marca', 'marcas')}, ${heard} se ${plural(heard, 'encontró', 'encontraron')} escuchando solo la frecuencia del diapasón, ${where}, y comparando con el ruido de la sala en la misma banda estrecha; después se leyó la longitud en la regla.`,
  sources: {
    microphone: 'con el micrófono',
    recording: 'en una grabación',
    practice: 'en la columna de práctica simulada',
  },
  byHand: (byHand, marks) =>
    `De ${counted(marks, 'marca', 'marcas')}, ${byHand} se ${plural(byHand, 'añadió', 'añadieron')} a mano.`,
  bracketed: (marks) =>
    `Donde una marca tiene dos longitudes (${marks}), la resonancia está entre ellas y cuenta el punto medio.`,
  theory:
    'Una columna cerrada por un extremo resuena cuando su longitud es un número impar de cuartos de longitud de onda; una abierta por los dos, cuando es un número entero de medias longitudes de onda. De esa longitud se resta una corrección de extremo por cada extremo abierto. La velocidad es la longitud de onda por la frecuencia. Un solo ajuste ponderado usa todas las marcas, cada una con su incertidumbre. Si se conoce el diámetro del tubo, se corrige el frenado de la onda por la pared.',
};

export const marksPart: LaterWords['marksPart'] = {
  heading: 'Marcas',
  none: 'Ninguna todavía.',
  table: 'Tabla de marcas',
  mark: 'Marca',
  column: 'Diapasón y columna',
  length: 'Longitud, cm',
  order: 'Orden',
  residual: 'Diferencia con el ajuste, mm',
  remarks: 'Observaciones',
  nothing: '—',
  number: (number, isAgain) => (isAgain ? `${number} otra vez` : `${number}`),
  between: (oneCm, otherCm) => `${oneCm} a ${otherCm}`,
  repeats: (mark) => `otra pasada por la resonancia de la marca ${mark}`,
  leftOut: 'excluida del ajuste',
  outlier: (cause) => `valor atípico: ${cause}`,
  below: (shown, all) =>
    shown === all
      ? 'Longitudes tal como las da la regla.'
      : `Longitudes tal como las da la regla. De ${all} marcas se imprimen las ${shown} primeras; en las tablas de Archivo están todas.`,
};

export const comparisonPart: LaterWords['comparisonPart'] = {
  heading: 'Comparación con la teoría',
  headingHidden: 'Comparación',
  hidden: 'Esta clase oculta la velocidad prevista.',
  theory:
    'La velocidad prevista es la del sonido en el aire a la temperatura, humedad y presión anotadas (Cramer 1993); en otro gas es √(γRT/M).',
  place: (place, difference) =>
    difference === null
      ? `${place}: no se anotó la temperatura del aire, así que no se puede prever ninguna velocidad.`
      : `${place}: velocidad medida menos prevista: ${difference}.`,
  pairsLeft: (pairs) =>
    `${counted(pairs, 'par de lugares más no se imprime', 'pares de lugares más no se imprimen')}. «Comparar» en la página muestra la diferencia entre dos cualesquiera.`,
};
