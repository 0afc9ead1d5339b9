import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

/** "1 vez", "2 veces". */
const times = (count: number): string => counted(count, 'vez', 'veces');

export const listening: FirstWords['listening'] = {
  between: (fromS, toS, said) => `Entre ${fromS} y ${toS}\u00a0s: ${said}`,
  slower: 'Desliza más despacio: el ancho de una mano en cuatro segundos.',
  noFork: (toleranceHz, nominalHz) =>
    `No se oyó ningún tono estable a menos de ${toleranceHz}\u00a0Hz de ${nominalHz}\u00a0Hz: comprueba la frecuencia grabada en el diapasón, golpea más fuerte o acerca el diapasón al micrófono.`,
  otherFork: (toleranceHz, nominalHz, otherHz) =>
    `No se oyó ningún tono estable a menos de ${toleranceHz}\u00a0Hz de ${nominalHz}\u00a0Hz, pero sí uno de unos ${otherHz}\u00a0Hz: comprueba la frecuencia grabada en el diapasón y la elegida en esta página. Si es el diapasón correcto, está muy lejos de su valor grabado: lastrado, mellado o suelto.`,
  offStamp: (measuredHz, offsetHz, isAbove) =>
    `El diapasón suena a ${measuredHz}\u00a0Hz, ${offsetHz}\u00a0Hz por ${isAbove ? 'encima' : 'debajo'} de su valor grabado: usa la frecuencia medida y mira si el diapasón tiene mellas.`,
  beating: (beatHz, isAbove) =>
    `Suena otro diapasón de casi la misma frecuencia, ${beatHz}\u00a0Hz por ${isAbove ? 'encima' : 'debajo'} del tuyo: hay ${beatHz} batidos por segundo. Haz que lo apaguen o espera a que deje de sonar.`,
  forkTurned: (turns, fromS) =>
    `El tono se calló y volvió invertido ${times(turns)} desde ${fromS}\u00a0s, como cuando se gira el diapasón sobre su mango: mantén una misma rama frente a la boca.`,
  tooFast: (halfPowerS, slower) =>
    `Las resonancias pasaron en ${halfPowerS}\u00a0s, demasiado rápido: la columna no tuvo tiempo de alcanzar todo su volumen. ${slower}`,
  tooFastAt: (timeS, slower) =>
    `A los ${timeS}\u00a0s pasó una resonancia demasiado rápido: la columna no tuvo tiempo de alcanzar todo su volumen, y quizá falte su marca. ${slower}`,
  clipping: (count) =>
    `La entrada fue demasiado fuerte ${times(count)}: aleja el micrófono o baja su ganancia.`,
  overdriven: (percent, count) =>
    `El sonido se recortó ${times(count)} al ${percent}\u00a0% de la escala completa, antes de llegar a la grabadora: aleja el micrófono o baja su ganancia.`,
  tooFaint: (percent) =>
    `El momento más fuerte solo llega al ${percent}\u00a0% de la escala completa: sube la ganancia del micrófono o acércalo a la boca de la columna.`,
  gainPumping:
    'La sala se oye menos cuando el diapasón suena fuerte: una ganancia automática cambia el volumen, y los niveles no se pueden comparar. Desactiva la ganancia automática, la supresión de ruido y la cancelación de eco del micrófono.',
  tooShort:
    'La grabación dura menos de un segundo: es demasiado corta para encontrar en ella un diapasón. Graba un deslizamiento entero.',
  silent: 'No llega ningún sonido: el micrófono está silenciado o no es el correcto.',
  gap: (losses, timeS) =>
    `Se perdió sonido ${times(losses)}, primero a los ${timeS}\u00a0s: allí no se marca ninguna resonancia. Cierra otros programas y desliza de nuevo por allí.`,
  dropouts: (count) =>
    `El sonido se cortó y volvió ${times(count)}: los niveles allí son demasiado bajos. Cierra otros programas o usa un micrófono con cable.`,
  dropoutsFrom: (count, timeS) =>
    `El sonido se cortó y volvió ${times(count)}, primero a los ${timeS}\u00a0s: los niveles allí son demasiado bajos. Cierra otros programas o usa un micrófono con cable.`,
  narrowBand: (edgeKhz) =>
    `No hay nada por encima de ${edgeKhz}\u00a0kHz: es típico de voces lejos del micrófono, de unos auriculares en modo de llamada o de la grabación de un teléfono. La frecuencia del diapasón es más baja y se oye. Si los niveles parecen raros, haz el control de ganancia o elige el micrófono del propio aparato.`,
  highBandMissing: (edgeKhz) =>
    `No hay nada por encima de ${edgeKhz}\u00a0kHz: es típico de una sala silenciosa, de una supresión de ruido o de un archivo muy comprimido. La frecuencia del diapasón es más baja y se oye. Si los niveles parecen raros, haz el control de ganancia; graba en WAV si puedes.`,
  floorFell: (fallDb) =>
    `El silencio entre sonidos bajó ${fallDb}\u00a0dB por debajo del ruido inicial de la sala: o la sala se calmó, o empezó a actuar una supresión de ruido. Con un micrófono, haz el control de ganancia antes de fiarte de un nivel.`,
  offset: (percent) =>
    `El sonido tiene una componente continua del ${percent}\u00a0% de la escala completa: un fallo de la tarjeta de sonido o de su conector. Los niveles a la frecuencia del diapasón valen de todos modos; prueba otra entrada si el sonido se recorta.`,
  hum: (mainsHz, levelDb) =>
    `El zumbido de la red eléctrica a ${mainsHz}\u00a0Hz es fuerte (${levelDb}\u00a0dB): desenchufa el cargador o aléjate de fuentes de alimentación y lámparas.`,
  cutOff: 'Falta el final de este archivo: se cortó. Se usa lo que hay.',
};

export const unheardFrequency: FirstWords['unheardFrequency'] = {
  sampleRate: {
    what: (sampleRateHz, lowestHz, highestHz) =>
      `Este sonido tiene una frecuencia de muestreo de ${sampleRateHz}\u00a0Hz; esta página puede usar de ${lowestHz} a ${highestHz}\u00a0Hz.`,
    advice: (usualRates) => `Graba a ${usualRates}\u00a0Hz.`,
  },
  frequency: {
    what: (frequencyHz, sampleRateHz, lowestHz, highestHz) =>
      `Una frecuencia de ${frequencyHz}\u00a0Hz no se puede oír con la frecuencia de muestreo de este sonido, ${sampleRateHz}\u00a0Hz: solo de ${lowestHz} a ${highestHz}\u00a0Hz.`,
    advice: (usualRates) =>
      `Graba a ${usualRates}\u00a0Hz (el micrófono de unos auriculares suele dar menos) o elige otra frecuencia. Las longitudes se pueden escribir igualmente.`,
  },
};
