import type { FirstWords } from '../catalogue.ts';

export const parseFault: FirstWords['parseFault'] = {
  quantities: {
    value: 'el valor',
    length: 'la longitud',
    order: 'el orden',
    temperature: 'la temperatura',
    humidity: 'la humedad',
    pressure: 'la presión',
    'carbon-dioxide': 'el dióxido de carbono',
    pitch: 'la frecuencia',
    diameter: 'el diámetro',
    'length-uncertainty': 'la incertidumbre de la longitud',
    'fork-uncertainty': 'la incertidumbre del diapasón',
    uncertainty: 'la incertidumbre',
    'reading-uncertainty': 'la incertidumbre de lectura',
    'longest-column': 'la columna más larga',
    'zero-offset': 'el desfase del cero',
    rise: 'la subida',
    'centre-uncertainty': 'la incertidumbre del centro',
    speed: 'la velocidad',
    speed_mps: 'speed_mps',
    standard_uncertainty_mps: 'standard_uncertainty_mps',
    expanded_uncertainty_mps: 'expanded_uncertainty_mps',
  },
  halfWidths: 'semianchuras',
  empty: (quantity) => `Falta un número para ${quantity}. Escríbelo, por ejemplo 15,8.`,
  noNumber: (typed, quantity) => `«${typed}» no es un número. Escribe ${quantity} en cifras.`,
  splitNumber: (typed, quantity) =>
    `«${typed}» tiene más de un signo decimal o un espacio. Escribe ${quantity} así: 1234,5.`,
  tooLarge: (typed, quantity) => `«${typed}» es demasiado grande para ${quantity}.`,
  unknownUnit: (typed, quantity, known) => `«${typed}» no es una unidad para ${quantity}. Usa ${known}.`,
  outOfRange: (quantity, lowest, highest, value, unit) =>
    `Para ${quantity} se puede poner de ${lowest} a ${highest} ${unit}, no ${value} ${unit}.`,
  checkUnit: (known) => `Revisa el número y su unidad (${known}).`,
  hints: {
    kelvin: (value) => `Si son kelvin, escribe ${value} K.`,
    fahrenheit: (value) => `Si son grados Fahrenheit, escribe ${value} °F.`,
    'plain-hpa': 'Un número sin unidad está en hPa: al nivel del mar son unos 1013.',
    'plain-mm': 'Un número sin unidad está en mm.',
    'fork-pitches':
      'Esta página trabaja con diapasones de estas frecuencias: revisa el número o toma otro diapasón.',
  },
  doubtfulHumidity: (value, percent) =>
    `${value}\u00a0% es más seco que cualquier sala. Si es una fracción, escribe ${percent}; si no, escribe ${value}\u00a0%.`,
  unknownLengthUnit: (typed) => `«${typed}» no es aquí una unidad de longitud. Usa cm, mm o m.`,
  badLength: {
    zero: (lowest, highest, unit) =>
      `La longitud es cero: se puede poner de ${lowest} a ${highest} ${unit}. Escribe la longitud de la columna de aire.`,
    negative: (value, lowest, highest, unit) =>
      `${value} ${unit} es negativo: se puede poner de ${lowest} a ${highest} ${unit}. Revisa el cero de la regla.`,
    belowPlain: (value, unit, centimetres) =>
      `${value} ${unit} es menos que cualquier columna. Un número sin unidad está en cm: si son metros, escribe ${value}\u00a0m o ${centimetres}; si no, escribe ${value}\u00a0cm.`,
    tooLong: (value, longestM, lowest, highest, unit) =>
      `${value} ${unit} es más que ${longestM}\u00a0m: se puede poner de ${lowest} a ${highest} ${unit}.`,
    tooShort: (value, lowest, highest, unit) =>
      `${value} ${unit} es menos que cualquier columna: se puede poner de ${lowest} a ${highest} ${unit}.`,
    millimetres: (value) => `Un número sin unidad está en cm: si son milímetros, escribe ${value}\u00a0mm.`,
    checkUnit: 'Revisa el número y su unidad (cm, mm o m).',
  },
  wideBracket: (widestCm) =>
    `Las dos longitudes están a más de ${widestCm}\u00a0cm: dos longitudes en una casilla describen una sola resonancia. Escríbelas más juntas, o como dos marcas.`,
  noEnds: (typed) =>
    `«${typed}» no es ni closed ni open. Escribe closed (cerrado por un extremo) u open (abierto por los dos extremos).`,
  emptyEnds:
    'La celda está vacía. Escribe closed (cerrado por un extremo) u open (abierto por los dos extremos).',
  badOrder: (lowest, highest, typed) =>
    `El orden debe ser un número entero de ${lowest} a ${highest}, no ${typed}. La primera resonancia tiene 1; déjalo vacío si no lo sabes.`,
  neitherYesNorNo: (typed) =>
    `«${typed}» no es ni sí ni no. Escribe sí para una marca excluida del ajuste; si no, deja la celda vacía.`,
  noWayOfLocating: (typed) =>
    `«${typed}» no dice cómo se encontró la longitud. Escribe centre donde esta página mostró el centro de la resonancia, y loudest donde se encontró de oído o por el nivel.`,
  noGas: (typed, known) =>
    `«${typed}» no es un gas que esta página conozca. Escribe ${known}, o deja la celda vacía para el aire.`,
  noMouth: (typed, known) =>
    `«${typed}» no es una boca que esta página conozca. Escribe ${known}, o deja la celda vacía.`,
};
