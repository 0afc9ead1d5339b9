import type { LaterWords } from '../../catalogue.ts';
import { fixed, hertz } from '../../numbers.ts';

export const tube: LaterWords['tube'] = {
  heading: 'Tubo y regla',
  diameter: 'Diámetro interior',
  diameterHint: 'para la corrección de extremo y el frenado por la pared',
  otherDiameter: 'Diámetro en el otro extremo',
  otherDiameterHint: 'de un tubo que desliza dentro de otro, abierto por los dos extremos; vacío: el mismo',
  travel: 'Columna más larga',
  travelHint: 'la mayor longitud que puedes poner',
  stopper: 'Qué cierra la columna',
  stoppers: {
    piston: 'un pistón',
    dipped: 'agua, se mueve el tubo',
    filled: 'agua, se mueve su nivel',
  },
  reading: 'Incertidumbre de lectura',
  readingHint: (taken) =>
    `incertidumbre típica de una longitud, incluida la de encontrar la resonancia. Si está vacío: ${taken}.`,
  zero: 'Desfase del cero',
  zeroHint: 'lo que marca la regla cuando la columna mide cero; se resta de cada lectura',
  caution:
    'Un tubo de vidrio se rompe: sujétalo con suavidad y mantén el agua lejos del ordenador. Las normas de tu laboratorio van primero.',
};

export const mouthChoice: LaterWords['mouthChoice'] = {
  legend: 'Boca del tubo',
  lead: 'La columna se comporta como si fuera más larga que su tubo; cuánto, depende de la boca (línea discontinua en los dibujos). Este valor cuenta junto con tus longitudes, que lo corrigen si son más precisas.',
  notDescribed: 'Sin describir',
  anyOf: 'Puede ser cualquiera de estas.',
  ratio: (ratio, uncertainty) => `Corrección de extremo: ${ratio} ± ${uncertainty} radios.`,
  names: {
    'thin-rim': 'Borde fino',
    'thick-rim': 'Borde grueso',
    flange: 'Brida',
    obstructed: 'Algo cerca',
    ideal: 'Ideal',
  },
  shapes: {
    'thin-rim': 'Un tubo sin más; su pared es más fina que la décima parte de su radio.',
    'thick-rim': 'Una pared de entre la décima parte y la mitad del radio.',
    flange: 'Una placa alrededor de la boca, o el tubo termina en una pared.',
    obstructed: 'Una mano, un soporte o un diapasón grueso a menos de un diámetro.',
    ideal: 'Como en los ejercicios: sin corrección de extremo.',
  },
};

export const forks: LaterWords['forks'] = {
  heading: 'Diapasones',
  lead: 'Frecuencia grabada y su incertidumbre típica. Valen hasta que midas el diapasón.',
  pitch: (number) => `Diapasón ${number}`,
  uncertainty: (number) => `± diapasón ${number}`,
  remove: 'Quitar',
  removeNamed: (number) => `Quitar el diapasón ${number}`,
  notMeasured: 'Sin medir todavía (véase Comprobar).',
  measured: (frequencyHz, standardUncertaintyHz) =>
    `Medido ${fixed(frequencyHz, 2)} ± ${fixed(standardUncertaintyHz, 2)}\u00a0Hz; el ajuste usa este valor.`,
  useStamp: 'Usar el valor grabado',
  add: 'Añadir un diapasón',
  choose: 'elige su frecuencia…',
  offered: (frequencyHz) => `${hertz(frequencyHz)}\u00a0Hz`,
  others: 'Otra frecuencia: añade la más cercana y cambia el número.',
  caution:
    'Golpea el diapasón contra goma o la suela del zapato, nunca contra vidrio o un borde duro. Mantén el diapasón, cuando vibra, lejos de los dientes y del vidrio.',
};

export const places: LaterWords['places'] = {
  heading: 'Lugares y aire',
  lead: 'Lo que marcan allí el termómetro, el higrómetro y el barómetro. Deja vacío lo que no hayas leído.',
  place: (number) => `Lugar ${number}`,
  name: 'Nombre',
  remove: 'Quitar',
  removeNamed: (number) => `Quitar el lugar ${number}`,
  temperature: 'Temperatura del aire',
  temperatureUncertainty: 'Su incertidumbre',
  temperatureUncertaintyHint: 'del aire en el tubo: las manos y el aliento lo calientan',
  filling: 'En el tubo',
  humidity: 'Humedad',
  pressure: 'Presión',
  co2: 'Dióxido de carbono',
  add: 'Añadir un lugar',
};
