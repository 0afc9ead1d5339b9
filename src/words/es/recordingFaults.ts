import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const recordingFault: FirstWords['recordingFault'] = {
  convert: 'Guárdalo de nuevo como WAV normal (PCM, 16 bits).',
  said: {
    'no-wav': {
      what: 'Este archivo no es una grabación WAV.',
      advice: 'Elige un archivo de sonido.',
    },
    'header-cut-off': {
      what: 'El WAV está cortado dentro de su cabecera.',
      advice: 'Copia el archivo de nuevo.',
    },
    'not-decoded': {
      what: 'El navegador no encuentra en este archivo ningún sonido que pueda reproducir.',
      advice: 'Elige una grabación (WAV, MP3, M4A, OGG o WebM); una tabla de longitudes se abre en Archivo.',
    },
    shorter: { what: 'El archivo se acortó mientras se leía.', advice: 'Ábrelo de nuevo.' },
    unreadable: {
      what: 'El archivo ya no se puede leer: se movió o se cambió.',
      advice: 'Elígelo de nuevo.',
    },
    'no-bytes': { what: 'El archivo está vacío (0 bytes).', advice: 'Elige otra grabación.' },
    'cut-off': {
      what: 'El WAV acaba antes de que empiece su sonido: se cortó o nunca se terminó.',
      advice: 'Copia el archivo de nuevo o elige otro.',
    },
    'no-frames': {
      what: 'El WAV no contiene sonido.',
      advice: 'Graba de nuevo o elige otro archivo.',
    },
    'no-sound': {
      what: 'El archivo no contiene sonido.',
      advice: 'Graba de nuevo o elige otro archivo.',
    },
  },
  bigEndian: 'Este WAV tiene sus bytes en el orden big-endian.',
  noCoding: 'Este WAV no dice cómo está codificado su sonido.',
  coding: (name) => `Este WAV está codificado como ${name}, que aquí no se puede leer.`,
  codingNumber: (number) => `Este WAV está codificado con el número ${number}, que aquí no se puede leer.`,
  channels: (channels, most) =>
    `Este WAV dice tener ${counted(channels, 'canal', 'canales')} (son posibles de 1 a ${most}).`,
  sampleRate: (sampleRateHz, lowestHz, highestHz) =>
    `Este WAV dice tener una frecuencia de muestreo de ${sampleRateHz}\u00a0Hz (son posibles de ${lowestHz} a ${highestHz}).`,
  bits: (bits, bytesPerFrame, channels) =>
    `Este WAV dice tener ${counted(bits, 'bit', 'bits')} por muestra en ${counted(bytesPerFrame, 'byte', 'bytes')} por trama de ${counted(channels, 'canal', 'canales')}, que no se puede leer.`,
  duration: {
    what: (hours, mostHours) => `Esta grabación dura ${hours} horas; son posibles hasta ${mostHours}.`,
    advice: 'Córtala.',
  },
  size: {
    what: (megabytes, mostMegabytes) =>
      `Esta grabación comprimida tiene ${megabytes}\u00a0MB, más que los ${mostMegabytes}\u00a0MB que un navegador puede tener a la vez.`,
    advice: 'Guárdala como WAV, que puede tener cualquier duración, o córtala.',
  },
};
