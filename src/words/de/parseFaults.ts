import type { FirstWords } from '../catalogue.ts';

export const parseFault: FirstWords['parseFault'] = {
  quantities: {
    value: 'den Wert',
    length: 'die Länge',
    order: 'die Ordnung',
    temperature: 'die Temperatur',
    humidity: 'die Luftfeuchte',
    pressure: 'den Luftdruck',
    'carbon-dioxide': 'das Kohlendioxid',
    pitch: 'die Frequenz',
    diameter: 'den Durchmesser',
    'length-uncertainty': 'die Unsicherheit der Länge',
    'fork-uncertainty': 'die Unsicherheit der Gabel',
    uncertainty: 'die Unsicherheit',
    'reading-uncertainty': 'die Ableseunsicherheit',
    'longest-column': 'die längste Säule',
    'zero-offset': 'die Nullpunktverschiebung',
    rise: 'den Anstieg',
    'centre-uncertainty': 'die Unsicherheit der Mitte',
    speed: 'die Geschwindigkeit',
    speed_mps: 'speed_mps',
    standard_uncertainty_mps: 'standard_uncertainty_mps',
    expanded_uncertainty_mps: 'expanded_uncertainty_mps',
  },
  halfWidths: 'halbe Breiten',
  empty: (quantity) => `Für ${quantity} fehlt eine Zahl. Gib sie ein, etwa 15,8.`,
  noNumber: (typed, quantity) => `„${typed}“ ist keine Zahl. Schreib ${quantity} in Ziffern.`,
  splitNumber: (typed, quantity) =>
    `„${typed}“ enthält mehr als ein Dezimalzeichen oder ein Leerzeichen. Schreib ${quantity} wie 1234,5.`,
  tooLarge: (typed, quantity) => `„${typed}“ ist zu groß für ${quantity}.`,
  unknownUnit: (typed, quantity, known) => `„${typed}“ ist keine Einheit für ${quantity}. Nimm ${known}.`,
  outOfRange: (quantity, lowest, highest, value, unit) =>
    `Für ${quantity} sind ${lowest} bis ${highest} ${unit} möglich, nicht ${value} ${unit}.`,
  checkUnit: (known) => `Prüf die Zahl und ihre Einheit (${known}).`,
  hints: {
    kelvin: (value) => `Für Kelvin schreib ${value} K.`,
    fahrenheit: (value) => `Für Grad Fahrenheit schreib ${value} °F.`,
    'plain-hpa': 'Zahlen ohne Einheit sind hPa: Auf Meereshöhe sind es etwa 1013.',
    'plain-mm': 'Zahlen ohne Einheit sind mm.',
    'fork-pitches':
      'Mit Gabeln dieser Frequenzen arbeitet diese Seite: Prüf die Zahl, oder nimm eine andere Gabel.',
  },
  doubtfulHumidity: (value, percent) =>
    `${value}\u00a0% ist trockener als jeder Raum. Wenn es ein Bruchteil ist, schreib ${percent}; wenn nicht, schreib ${value}\u00a0%.`,
  unknownLengthUnit: (typed) => `„${typed}“ ist hier keine Längeneinheit. Nimm cm, mm oder m.`,
  badLength: {
    zero: (lowest, highest, unit) =>
      `Die Länge ist null; möglich sind ${lowest} bis ${highest} ${unit}. Gib die Länge der Luftsäule ein.`,
    negative: (value, lowest, highest, unit) =>
      `${value} ${unit} ist negativ; möglich sind ${lowest} bis ${highest} ${unit}. Prüf den Nullpunkt des Maßstabs.`,
    belowPlain: (value, unit, centimetres) =>
      `${value} ${unit} ist kürzer als jede Säule. Zahlen ohne Einheit sind cm: Wenn es Meter sind, schreib ${value}\u00a0m oder ${centimetres}; wenn nicht, schreib ${value}\u00a0cm.`,
    tooLong: (value, longestM, lowest, highest, unit) =>
      `${value} ${unit} ist länger als ${longestM}\u00a0m; möglich sind ${lowest} bis ${highest} ${unit}.`,
    tooShort: (value, lowest, highest, unit) =>
      `${value} ${unit} ist kürzer als jede Säule; möglich sind ${lowest} bis ${highest} ${unit}.`,
    millimetres: (value) => `Zahlen ohne Einheit sind cm: Wenn es Millimeter sind, schreib ${value}\u00a0mm.`,
    checkUnit: 'Prüf die Zahl und ihre Einheit (cm, mm oder m).',
  },
  wideBracket: (widestCm) =>
    `Die beiden Längen liegen mehr als ${widestCm}\u00a0cm auseinander: Zwei Längen in einem Feld gehören zu einer Resonanz. Gib sie näher beieinander ein, oder als zwei Marken.`,
  noEnds: (typed) =>
    `„${typed}“ ist weder closed noch open. Schreib closed (einseitig geschlossen) oder open (beidseitig offen).`,
  emptyEnds: 'Die Zelle ist leer. Schreib closed (einseitig geschlossen) oder open (beidseitig offen).',
  badOrder: (lowest, highest, typed) =>
    `Die Ordnung muss eine ganze Zahl von ${lowest} bis ${highest} sein, nicht ${typed}. Die erste Resonanz hat 1; lass sie leer, wenn du sie nicht weißt.`,
  neitherYesNorNo: (typed) =>
    `„${typed}“ ist weder ja noch nein. Schreib ja für eine Marke, die ausgelassen ist; sonst lass die Zelle leer.`,
  noWayOfLocating: (typed) =>
    `„${typed}“ sagt nicht, wie die Länge gefunden wurde. Schreib centre, wo diese Seite die Mitte der Resonanz zeigte, und loudest, wo sie nach Gehör oder Pegel gefunden wurde.`,
  noGas: (typed, known) =>
    `„${typed}“ ist kein Gas, das diese Seite kennt. Schreib ${known}, oder lass die Zelle für Luft leer.`,
  noMouth: (typed, known) =>
    `„${typed}“ ist keine Mündung, die diese Seite kennt. Schreib ${known}, oder lass die Zelle leer.`,
};
