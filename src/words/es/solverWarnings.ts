import type { LaterWords } from '../catalogue.ts';
import { plural } from './grammar.ts';

export const solverWarning: LaterWords['solverWarning'] = {
  noMarks:
    'Ninguna marca tiene todavía una longitud utilizable. Pon una marca en una resonancia y lee su longitud.',
  noOrders: 'Ninguna elección de órdenes encaja con estas marcas.',
  contradiction:
    'Con estos órdenes, una columna más larga tendría una onda más corta. Comprueba las longitudes y los órdenes fijados.',
  outlier: (mark, cause) => `${mark} no encaja y no cuenta en el ajuste. ${cause}`,
  inconsistent: (marks) =>
    `Las marcas se contradicen y no se puede saber cuál de estas está mal: ${marks}. Repítelas.`,
  bracketWide: (mark) =>
    `Las dos longitudes están demasiado separadas para situar bien la resonancia: ${mark}.`,
  nothingFits:
    'La mayoría de estas longitudes no encaja con ninguna resonancia de una misma velocidad y corrección de extremo. Comprueba la unidad de las longitudes, el diapasón y los extremos antes de usar el resultado.',
  nothingFitsDiameter:
    'La mayoría de estas longitudes no encaja con ninguna resonancia de una misma velocidad y corrección de extremo. Comprueba la unidad de las longitudes y la del diámetro, el diapasón y los extremos antes de usar el resultado.',
  columnType: {
    closed:
      'Estas longitudes no encajan con una columna abierta por los dos extremos, pero sí con una cerrada por un extremo. Comprueba qué extremos estaban abiertos.',
    open: 'Estas longitudes no encajan con una columna cerrada por un extremo, pero sí con una abierta por los dos. Comprueba qué extremos estaban abiertos.',
  },
  lengthUnit: (unit) =>
    `Estas longitudes no encajan tal como están, pero encajarían si estuvieran en ${unit}. Comprueba la unidad.`,
  orderAmbiguous: (marks) =>
    `Encaja más de una elección de órdenes: ${marks}. Pon una marca en una resonancia vecina, o fija el orden.`,
  orderOf: (mark, order, percent, rival) =>
    `${mark}: orden ${order} (${percent}\u00a0%)${rival === null ? '' : `, si no ${rival}`}`,
  orderDoubtful: (marks) =>
    `El orden fijado no encaja con aire en este tubo: ${marks}. Deja el orden en «auto», o comprueba el diapasón.`,
  skippedOrders: (gaps) => `Aquí falta una marca: ${gaps}. ¿Se pasó por alto una resonancia?`,
  gap: {
    closed: (orders, hertz) => `orden ${orders} (${hertz}\u00a0Hz, cerrada)`,
    open: (orders, hertz) => `orden ${orders} (${hertz}\u00a0Hz, abierta)`,
  },
  otherExplanation: (others, percentAsNoted) =>
    `Estos números también podrían significar otra cosa: ${others}; tal como están anotados ${percentAsNoted}\u00a0%. Comprueba el diapasón, la unidad y el gas, o pon una marca en la primera resonancia.`,
  odds: (explanation, percent) => `${explanation} (${percent}\u00a0%)`,
  otherUnit: (unit) => `longitudes en ${unit}`,
  otherFork: (hertz) => `un diapasón de ${hertz}\u00a0Hz`,
  otherGas: (gas) => `${gas} en el tubo`,
  exactRepeats: (copies) =>
    `${plural(copies, 'Una marca es en todo igual', `${copies} marcas son en todo iguales`)} a otra y no ${plural(copies, 'cuenta', 'cuentan')} otra vez. ¿Pegaste dos veces? ${plural(copies, 'Exclúyela', 'Exclúyelas')}. ¿Leíste dos veces? Indica cuándo en la tabla, en made_at.`,
  forksAlike: (forks) =>
    `${forks} se toman por un solo diapasón, escrito de dos maneras. Si son dos diapasones, mide su frecuencia e indica fork_uncertainty_hz.`,
  hertz: (hertz) => `${hertz}\u00a0Hz`,
  tubeTooWide: (millimetres, hertz, ka) =>
    `Un tubo de ${millimetres}\u00a0mm es demasiado ancho para ${hertz}\u00a0Hz: el sonido ya no es en él una onda plana (ka = ${ka}), y la corrección de extremo prevista no vale. Usa un tubo más estrecho o un diapasón más grave.`,
  allUnchecked:
    'Nada en estas marcas podría delatar un error de lectura: dos longitudes encajan siempre. Una tercera resonancia lo mostraría.',
  unchecked: (marks) =>
    `Nada aquí podría delatar un error de lectura: ${marks}. Pon una marca en una resonancia más, o vuelve a leer la longitud.`,
  speedOfAir: {
    cold: (celsius) =>
      `Esta es la velocidad del sonido en aire a ${celsius}\u00a0°C. ¿Estaba tan fría la sala? Si no, comprueba la frecuencia del diapasón, la unidad de las longitudes y el gas.`,
    warm: (celsius) =>
      `Esta es la velocidad del sonido en aire a ${celsius}\u00a0°C. ¿Estaba tan caliente la sala? Si no, comprueba la frecuencia del diapasón, la unidad de las longitudes y el gas.`,
  },
  speedOfNoAir: {
    cold: 'No hay aire tan frío como pediría esta velocidad. Comprueba la frecuencia del diapasón, la unidad de las longitudes y el gas.',
    warm: 'No hay aire tan caliente como pediría esta velocidad. Comprueba la frecuencia del diapasón, la unidad de las longitudes y el gas.',
  },
  scatter: (factor) =>
    `Las longitudes se dispersan ${factor} veces lo que se indicó o supuso; la incertidumbre del resultado se aumenta.`,
  endImplausible: (millimetres) =>
    `La corrección de extremo sale ${millimetres}\u00a0mm. Comprueba el cero de la regla y los extremos.`,
  endImplausibleInRadii: (millimetres, radii, usualRadii) =>
    `La corrección de extremo sale ${millimetres}\u00a0mm, ${radii} veces el radio; lo habitual es unas ${usualRadii} veces. Comprueba el cero de la regla, el diámetro y los extremos.`,
  speedImplausible: (mps, lowest, highest) =>
    `${mps}\u00a0m/s está fuera de lo posible en el aire, de ${lowest} a ${highest}\u00a0m/s. Comprueba la frecuencia del diapasón y los órdenes.`,
  aboveTheory: (mps) =>
    `El resultado está ${mps}\u00a0m/s por encima de la velocidad prevista, más de lo que permiten las dos incertidumbres. Comprueba qué hay en la boca, las longitudes y el cero de la regla, y después el termómetro y la frecuencia del diapasón.`,
  belowTheory: (mps) =>
    `El resultado está ${mps}\u00a0m/s por debajo de la velocidad prevista, más de lo que permiten las dos incertidumbres. Comprueba qué hay en la boca, las longitudes y el cero de la regla, y después el termómetro y la frecuencia del diapasón.`,
  agreeingFork: (hertz) => `Un diapasón de ${hertz}\u00a0Hz concordaría: ¿era ese?`,
  implausible: 'La velocidad y la corrección de extremo juntas son poco habituales para aire en un tubo.',
  tooFewMarks:
    'Una sola marca no puede separar la corrección de extremo de la longitud de onda. Pon una marca en una segunda resonancia.',
  endFromTheory:
    'Las marcas solas no dan bien la corrección de extremo. Se usa lo que se sabe de la boca del tubo, con su incertidumbre.',
  endUnknown: (expected, giveOrTake) =>
    `Las marcas no dan la corrección de extremo y no se indicó el diámetro del tubo. Se suponen ${expected}\u00a0mm, como en los tubos habituales, con un margen de ± ${giveOrTake}\u00a0mm.`,
  noDiameter: (lowestPercent, highestPercent) =>
    `No se indicó el diámetro del tubo, así que no se sabe cuánto frena la pared a la onda (entre un ${lowestPercent} y un ${highestPercent}\u00a0%). No se corrige nada; la incertidumbre lo incluye.`,
  someDiametersMissing: 'Donde no se indicó el diámetro, se usa la media de los demás.',
  someTemperaturesMissing: 'Donde no se indicó la temperatura del aire, se usa la media de las demás.',
  noTemperature:
    'No se indicó la temperatura del aire, así que la velocidad no se puede comparar con la prevista.',
  ifAir: (celsius, giveOrTake) =>
    `Si el gas es aire, esta velocidad corresponde a ${celsius}\u00a0°C, con un margen de ± ${giveOrTake}\u00a0°C.`,
  airBeyondFormula:
    'Este aire está fuera de 0 a 30\u00a0°C y de 750 a 1020\u00a0hPa, donde se comprobó la fórmula de la velocidad prevista; la incertidumbre de esa velocidad se aumenta.',
};

export const unusableMark: LaterWords['unusableMark'] = {
  outOfRange: {
    frequencyHz: (mark, lowest, highest, value) =>
      `${mark} no se usa: su frecuencia debe estar entre ${lowest} y ${highest}\u00a0Hz, y es ${value}\u00a0Hz.`,
    frequencyStandardUncertaintyHz: (mark, lowest, highest, value) =>
      `${mark} no se usa: la incertidumbre de su frecuencia debe estar entre ${lowest} y ${highest}\u00a0Hz, y es ${value}\u00a0Hz.`,
    lengthM: (mark, lowest, highest, value) =>
      `${mark} no se usa: su longitud debe estar entre ${lowest} y ${highest}\u00a0m, y es ${value}\u00a0m.`,
    otherLengthM: (mark, lowest, highest, value) =>
      `${mark} no se usa: su otra longitud debe estar entre ${lowest} y ${highest}\u00a0m, y es ${value}\u00a0m.`,
    lengthStandardUncertaintyM: (mark, lowest, highest, value) =>
      `${mark} no se usa: la incertidumbre de su longitud debe estar entre ${lowest} y ${highest}\u00a0m, y es ${value}\u00a0m.`,
    radiusM: (mark, lowest, highest, value) =>
      `${mark} no se usa: el radio de su tubo debe estar entre ${lowest} y ${highest}\u00a0m, y es ${value}\u00a0m.`,
    otherRadiusM: (mark, lowest, highest, value) =>
      `${mark} no se usa: el otro radio de su tubo debe estar entre ${lowest} y ${highest}\u00a0m, y es ${value}\u00a0m.`,
    temperatureC: (mark, lowest, highest, value) =>
      `${mark} no se usa: su temperatura del aire debe estar entre ${lowest} y ${highest}\u00a0°C, y es ${value}\u00a0°C.`,
    humidityPct: (mark, lowest, highest, value) =>
      `${mark} no se usa: su humedad del aire debe estar entre ${lowest} y ${highest}\u00a0%, y es ${value}\u00a0%.`,
    pressurePa: (mark, lowest, highest, value) =>
      `${mark} no se usa: su presión del aire debe estar entre ${lowest} y ${highest} Pa, y es ${value} Pa.`,
  },
  anotherGas: (mark, gas, firstGas) =>
    `${mark} no se usa: se tomó en ${gas}, y la primera en ${firstGas}. Calcula cada gas por separado.`,
  orderNotWhole: (mark, order) =>
    `${mark} no se usa: su orden debe ser un número entero mayor que 0, y es ${order}.`,
  air: (mark) =>
    `${mark} no se usa: la temperatura, la humedad y la presión de su aire no pueden ser todas correctas.`,
};
