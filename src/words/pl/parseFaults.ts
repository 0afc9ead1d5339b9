import type { FirstWords } from '../catalogue.ts';

export const parseFault: FirstWords['parseFault'] = {
  // In the genitive, after „dla”.
  quantities: {
    value: 'wartości',
    length: 'długości',
    order: 'rzędu',
    temperature: 'temperatury',
    humidity: 'wilgotności',
    pressure: 'ciśnienia',
    'carbon-dioxide': 'dwutlenku węgla',
    pitch: 'częstotliwości',
    diameter: 'średnicy',
    'length-uncertainty': 'niepewności długości',
    'fork-uncertainty': 'niepewności kamertonu',
    uncertainty: 'niepewności',
    'reading-uncertainty': 'niepewności odczytu',
    'longest-column': 'najdłuższego słupa',
    'zero-offset': 'przesunięcia zera',
    rise: 'wzrostu',
    'centre-uncertainty': 'niepewności środka',
    speed: 'prędkości',
    speed_mps: 'speed_mps',
    standard_uncertainty_mps: 'standard_uncertainty_mps',
    expanded_uncertainty_mps: 'expanded_uncertainty_mps',
  },
  halfWidths: 'połówek szerokości',
  empty: (quantity) => `Brakuje liczby dla ${quantity}. Wpisz ją, na przykład 15,8.`,
  noNumber: (typed, quantity) => `„${typed}” nie jest liczbą. Dla ${quantity} wpisz cyfry.`,
  splitNumber: (typed, quantity) =>
    `„${typed}” ma więcej niż jeden znak dziesiętny albo spację. Dla ${quantity} wpisz liczbę taką jak 1234,5.`,
  tooLarge: (typed, quantity) => `„${typed}” to za dużo dla ${quantity}.`,
  unknownUnit: (typed, quantity, known) => `„${typed}” nie jest jednostką dla ${quantity}. Użyj ${known}.`,
  outOfRange: (quantity, lowest, highest, value, unit) =>
    `Dla ${quantity} można wpisać od ${lowest} do ${highest} ${unit}, nie ${value} ${unit}.`,
  checkUnit: (known) => `Sprawdź liczbę i jednostkę (${known}).`,
  hints: {
    kelvin: (value) => `Dla kelwinów wpisz ${value} K.`,
    fahrenheit: (value) => `Dla stopni Fahrenheita wpisz ${value} °F.`,
    'plain-hpa': 'Liczba bez jednostki jest w hPa: na poziomie morza to około 1013.',
    'plain-mm': 'Liczba bez jednostki jest w mm.',
    'fork-pitches':
      'Ta strona działa z kamertonami o takich częstotliwościach: sprawdź liczbę albo weź inny kamerton.',
  },
  doubtfulHumidity: (value, percent) =>
    `${value}\u00a0% to suszej niż w jakiejkolwiek sali. Jeśli to ułamek, wpisz ${percent}; jeśli nie, wpisz ${value}\u00a0%.`,
  unknownLengthUnit: (typed) => `„${typed}” nie jest tu jednostką długości. Użyj cm, mm lub m.`,
  badLength: {
    zero: (lowest, highest, unit) =>
      `Długość wynosi zero: można wpisać od ${lowest} do ${highest} ${unit}. Wpisz długość słupa powietrza.`,
    negative: (value, lowest, highest, unit) =>
      `${value} ${unit} to liczba ujemna: można wpisać od ${lowest} do ${highest} ${unit}. Sprawdź zero linijki.`,
    belowPlain: (value, unit, centimetres) =>
      `${value} ${unit} to mniej niż jakikolwiek słup. Liczba bez jednostki jest w cm: jeśli to metry, wpisz ${value}\u00a0m albo ${centimetres}; jeśli nie, wpisz ${value}\u00a0cm.`,
    tooLong: (value, longestM, lowest, highest, unit) =>
      `${value} ${unit} to więcej niż ${longestM}\u00a0m: można wpisać od ${lowest} do ${highest} ${unit}.`,
    tooShort: (value, lowest, highest, unit) =>
      `${value} ${unit} to mniej niż jakikolwiek słup: można wpisać od ${lowest} do ${highest} ${unit}.`,
    millimetres: (value) => `Liczba bez jednostki jest w cm: jeśli to milimetry, wpisz ${value}\u00a0mm.`,
    checkUnit: 'Sprawdź liczbę i jednostkę (cm, mm lub m).',
  },
  wideBracket: (widestCm) =>
    `Te dwie długości różnią się o więcej niż ${widestCm}\u00a0cm: dwie długości w jednym polu opisują jeden rezonans. Wpisz je bliżej siebie albo jako dwa znaczniki.`,
  noEnds: (typed) =>
    `„${typed}” to ani closed, ani open. Wpisz closed (jednostronnie zamknięty) lub open (obustronnie otwarty).`,
  emptyEnds: 'Komórka jest pusta. Wpisz closed (jednostronnie zamknięty) lub open (obustronnie otwarty).',
  badOrder: (lowest, highest, typed) =>
    `Rząd musi być liczbą całkowitą od ${lowest} do ${highest}, nie ${typed}. Pierwszy rezonans ma 1; zostaw puste, jeśli nie wiesz.`,
  neitherYesNorNo: (typed) =>
    `„${typed}” to ani tak, ani nie. Wpisz tak przy znaczniku pominiętym w dopasowaniu; w innym razie zostaw komórkę pustą.`,
  noWayOfLocating: (typed) =>
    `„${typed}” nie mówi, jak znaleziono długość. Wpisz centre tam, gdzie ta strona pokazała środek rezonansu, a loudest tam, gdzie znaleziono ją na słuch lub według poziomu.`,
  noGas: (typed, known) =>
    `„${typed}” nie jest gazem, który ta strona zna. Wpisz ${known} albo zostaw komórkę pustą dla powietrza.`,
  noMouth: (typed, known) =>
    `„${typed}” nie jest wylotem, który ta strona zna. Wpisz ${known} albo zostaw komórkę pustą.`,
};
