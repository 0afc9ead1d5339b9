import type { FirstWords } from '../catalogue.ts';

export const parseFault: FirstWords['parseFault'] = {
  quantities: {
    value: 'o valor',
    length: 'o comprimento',
    order: 'a ordem',
    temperature: 'a temperatura',
    humidity: 'a umidade',
    pressure: 'a pressão',
    'carbon-dioxide': 'o dióxido de carbono',
    pitch: 'a frequência',
    diameter: 'o diâmetro',
    'length-uncertainty': 'a incerteza do comprimento',
    'fork-uncertainty': 'a incerteza do diapasão',
    uncertainty: 'a incerteza',
    'reading-uncertainty': 'a incerteza de leitura',
    'longest-column': 'a coluna mais longa',
    'zero-offset': 'o desvio do zero',
    rise: 'o aumento',
    'centre-uncertainty': 'a incerteza do centro',
    speed: 'a velocidade',
    speed_mps: 'speed_mps',
    standard_uncertainty_mps: 'standard_uncertainty_mps',
    expanded_uncertainty_mps: 'expanded_uncertainty_mps',
  },
  halfWidths: 'meias larguras',
  empty: (quantity) => `Falta um número para ${quantity}. Digite-o, por exemplo 15,8.`,
  noNumber: (typed, quantity) => `“${typed}” não é um número. Escreva ${quantity} em algarismos.`,
  splitNumber: (typed, quantity) =>
    `“${typed}” tem mais de um sinal decimal ou um espaço. Escreva ${quantity} assim: 1234,5.`,
  tooLarge: (typed, quantity) => `“${typed}” é grande demais para ${quantity}.`,
  unknownUnit: (typed, quantity, known) => `“${typed}” não é uma unidade para ${quantity}. Use ${known}.`,
  outOfRange: (quantity, lowest, highest, value, unit) =>
    `Para ${quantity}, use de ${lowest} a ${highest} ${unit}, não ${value} ${unit}.`,
  checkUnit: (known) => `Confira o número e a unidade (${known}).`,
  hints: {
    kelvin: (value) => `Para kelvin, escreva ${value} K.`,
    fahrenheit: (value) => `Para graus Fahrenheit, escreva ${value} °F.`,
    'plain-hpa': 'Um número sem unidade está em hPa: ao nível do mar são cerca de 1013.',
    'plain-mm': 'Um número sem unidade está em mm.',
    'fork-pitches':
      'Esta página trabalha com diapasões destas frequências: confira o número ou use outro diapasão.',
  },
  doubtfulHumidity: (value, percent) =>
    `${value}\u00a0% é mais seco que qualquer sala. Se for uma fração, escreva ${percent}; se não, escreva ${value}\u00a0%.`,
  unknownLengthUnit: (typed) => `“${typed}” não é uma unidade de comprimento aqui. Use cm, mm ou m.`,
  badLength: {
    zero: (lowest, highest, unit) =>
      `O comprimento é zero: use de ${lowest} a ${highest} ${unit}. Digite o comprimento da coluna de ar.`,
    negative: (value, lowest, highest, unit) =>
      `${value} ${unit} é negativo: use de ${lowest} a ${highest} ${unit}. Confira o zero da régua.`,
    belowPlain: (value, unit, centimetres) =>
      `${value} ${unit} é mais curto que qualquer coluna. Um número sem unidade está em cm: se forem metros, escreva ${value}\u00a0m ou ${centimetres}; se não, escreva ${value}\u00a0cm.`,
    tooLong: (value, longestM, lowest, highest, unit) =>
      `${value} ${unit} é mais longo que ${longestM}\u00a0m: use de ${lowest} a ${highest} ${unit}.`,
    tooShort: (value, lowest, highest, unit) =>
      `${value} ${unit} é mais curto que qualquer coluna: use de ${lowest} a ${highest} ${unit}.`,
    millimetres: (value) =>
      `Um número sem unidade está em cm: se forem milímetros, escreva ${value}\u00a0mm.`,
    checkUnit: 'Confira o número e a unidade (cm, mm ou m).',
  },
  wideBracket: (widestCm) =>
    `Os dois comprimentos estão a mais de ${widestCm}\u00a0cm um do outro: dois comprimentos em um campo descrevem uma só ressonância. Digite-os mais próximos, ou como duas marcas.`,
  noEnds: (typed) =>
    `“${typed}” não é closed nem open. Escreva closed (fechado em uma extremidade) ou open (aberto nas duas).`,
  emptyEnds: 'A célula está vazia. Escreva closed (fechado em uma extremidade) ou open (aberto nas duas).',
  badOrder: (lowest, highest, typed) =>
    `A ordem deve ser um número inteiro de ${lowest} a ${highest}, não ${typed}. A primeira ressonância tem 1; deixe vazio se você não souber.`,
  neitherYesNorNo: (typed) =>
    `“${typed}” não é sim nem não. Escreva sim para uma marca excluída do ajuste; se não, deixe a célula vazia.`,
  noWayOfLocating: (typed) =>
    `“${typed}” não diz como o comprimento foi achado. Escreva centre onde esta página mostrou o centro da ressonância, e loudest onde ele foi achado de ouvido ou pelo nível.`,
  noGas: (typed, known) =>
    `“${typed}” não é um gás que esta página conhece. Escreva ${known}, ou deixe a célula vazia para o ar.`,
  noMouth: (typed, known) =>
    `“${typed}” não é uma boca que esta página conhece. Escreva ${known}, ou deixe a célula vazia.`,
};
