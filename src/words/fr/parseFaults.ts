import type { FirstWords } from '../catalogue.ts';

export const parseFault: FirstWords['parseFault'] = {
  quantities: {
    value: 'la valeur',
    length: 'la longueur',
    order: 'l’ordre',
    temperature: 'la température',
    humidity: 'l’humidité',
    pressure: 'la pression',
    'carbon-dioxide': 'le dioxyde de carbone',
    pitch: 'la fréquence',
    diameter: 'le diamètre',
    'length-uncertainty': 'l’incertitude de la longueur',
    'fork-uncertainty': 'l’incertitude du diapason',
    uncertainty: 'l’incertitude',
    'reading-uncertainty': 'l’incertitude de lecture',
    'longest-column': 'la colonne la plus longue',
    'zero-offset': 'le décalage du zéro',
    rise: 'la hausse',
    'centre-uncertainty': 'l’incertitude du centre',
    speed: 'la vitesse',
    speed_mps: 'speed_mps',
    standard_uncertainty_mps: 'standard_uncertainty_mps',
    expanded_uncertainty_mps: 'expanded_uncertainty_mps',
  },
  halfWidths: 'demi-largeurs',
  empty: (quantity) => `Il manque un nombre pour ${quantity}. Tapez-le, par exemple 15,8.`,
  noNumber: (typed, quantity) =>
    `«\u00a0${typed}\u00a0» n’est pas un nombre. Écrivez ${quantity} en chiffres.`,
  splitNumber: (typed, quantity) =>
    `«\u00a0${typed}\u00a0» contient plusieurs signes décimaux ou une espace. Écrivez ${quantity} comme 1234,5.`,
  tooLarge: (typed, quantity) => `«\u00a0${typed}\u00a0» est trop grand pour ${quantity}.`,
  unknownUnit: (typed, quantity, known) =>
    `«\u00a0${typed}\u00a0» n’est pas une unité pour ${quantity}. Utilisez ${known}.`,
  outOfRange: (quantity, lowest, highest, value, unit) =>
    `Pour ${quantity}, il faut de ${lowest} à ${highest} ${unit}, pas ${value} ${unit}.`,
  checkUnit: (known) => `Vérifiez le nombre et son unité (${known}).`,
  hints: {
    kelvin: (value) => `Pour des kelvins, écrivez ${value} K.`,
    fahrenheit: (value) => `Pour des degrés Fahrenheit, écrivez ${value}\u00a0°F.`,
    'plain-hpa': 'Un nombre sans unité est en hPa\u00a0: au niveau de la mer, environ 1013.',
    'plain-mm': 'Un nombre sans unité est en mm.',
    'fork-pitches':
      'Cette page fonctionne avec des diapasons de ces fréquences\u00a0: vérifiez le nombre, ou prenez un autre diapason.',
  },
  doubtfulHumidity: (value, percent) =>
    `${value}\u00a0% est plus sec que n’importe quelle salle. Si c’est une fraction, écrivez ${percent}\u00a0; sinon, écrivez ${value}\u00a0%.`,
  unknownLengthUnit: (typed) =>
    `«\u00a0${typed}\u00a0» n’est pas une unité de longueur ici. Utilisez cm, mm ou m.`,
  badLength: {
    zero: (lowest, highest, unit) =>
      `La longueur est nulle\u00a0: il faut de ${lowest} à ${highest} ${unit}. Tapez la longueur de la colonne d’air.`,
    negative: (value, lowest, highest, unit) =>
      `${value} ${unit} est négatif\u00a0: il faut de ${lowest} à ${highest} ${unit}. Vérifiez le zéro de la règle.`,
    belowPlain: (value, unit, centimetres) =>
      `${value} ${unit} est plus court que n’importe quelle colonne. Un nombre sans unité est en cm\u00a0: si ce sont des mètres, écrivez ${value}\u00a0m ou ${centimetres}\u00a0; sinon, écrivez ${value}\u00a0cm.`,
    tooLong: (value, longestM, lowest, highest, unit) =>
      `${value} ${unit} est plus long que ${longestM}\u00a0m\u00a0: il faut de ${lowest} à ${highest} ${unit}.`,
    tooShort: (value, lowest, highest, unit) =>
      `${value} ${unit} est plus court que n’importe quelle colonne\u00a0: il faut de ${lowest} à ${highest} ${unit}.`,
    millimetres: (value) =>
      `Un nombre sans unité est en cm\u00a0: si ce sont des millimètres, écrivez ${value}\u00a0mm.`,
    checkUnit: 'Vérifiez le nombre et son unité (cm, mm ou m).',
  },
  wideBracket: (widestCm) =>
    `Les deux longueurs sont à plus de ${widestCm}\u00a0cm l’une de l’autre\u00a0: deux longueurs dans une case décrivent une seule résonance. Tapez-les plus proches, ou comme deux repères.`,
  noEnds: (typed) =>
    `«\u00a0${typed}\u00a0» n’est ni closed ni open. Écrivez closed (fermé à une extrémité) ou open (ouvert aux deux extrémités).`,
  emptyEnds: 'La case est vide. Écrivez closed (fermé à une extrémité) ou open (ouvert aux deux extrémités).',
  badOrder: (lowest, highest, typed) =>
    `L’ordre doit être un nombre entier de ${lowest} à ${highest}, pas ${typed}. La première résonance a l’ordre 1\u00a0; laissez vide si vous ne savez pas.`,
  neitherYesNorNo: (typed) =>
    `«\u00a0${typed}\u00a0» n’est ni oui ni non. Écrivez oui pour un repère écarté de l’ajustement\u00a0; sinon, laissez la case vide.`,
  noWayOfLocating: (typed) =>
    `«\u00a0${typed}\u00a0» ne dit pas comment la longueur a été trouvée. Écrivez centre là où cette page montrait le centre de la résonance, loudest là où elle a été trouvée à l’oreille ou au niveau.`,
  noGas: (typed, known) =>
    `«\u00a0${typed}\u00a0» n’est pas un gaz que cette page connaît. Écrivez ${known}, ou laissez la case vide pour l’air.`,
  noMouth: (typed, known) =>
    `«\u00a0${typed}\u00a0» n’est pas une embouchure que cette page connaît. Écrivez ${known}, ou laissez la case vide.`,
};
