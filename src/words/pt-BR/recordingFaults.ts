import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const recordingFault: FirstWords['recordingFault'] = {
  convert: 'Salve-o de novo como WAV comum (PCM, 16 bits).',
  said: {
    'no-wav': {
      what: 'Este arquivo não é uma gravação WAV.',
      advice: 'Escolha um arquivo de som.',
    },
    'header-cut-off': {
      what: 'O WAV está cortado dentro do cabeçalho.',
      advice: 'Copie o arquivo de novo.',
    },
    'not-decoded': {
      what: 'O navegador não acha neste arquivo nenhum som que consiga reproduzir.',
      advice:
        'Escolha uma gravação (WAV, MP3, M4A, OGG ou WebM); uma tabela de comprimentos se abre em Arquivo.',
    },
    shorter: { what: 'O arquivo ficou mais curto durante a leitura.', advice: 'Abra-o de novo.' },
    unreadable: {
      what: 'O arquivo não pode mais ser lido: foi movido ou alterado.',
      advice: 'Escolha-o de novo.',
    },
    'no-bytes': { what: 'O arquivo está vazio (0 bytes).', advice: 'Escolha outra gravação.' },
    'cut-off': {
      what: 'O WAV acaba antes de o som começar: foi cortado ou nunca foi terminado.',
      advice: 'Copie o arquivo de novo ou escolha outro.',
    },
    'no-frames': {
      what: 'O WAV não contém som.',
      advice: 'Grave de novo ou escolha outro arquivo.',
    },
    'no-sound': {
      what: 'O arquivo não contém som.',
      advice: 'Grave de novo ou escolha outro arquivo.',
    },
  },
  bigEndian: 'Este WAV tem os bytes na ordem big-endian.',
  noCoding: 'Este WAV não diz como o som está codificado.',
  coding: (name) => `Este WAV está codificado como ${name}, que não pode ser lido aqui.`,
  codingNumber: (number) => `Este WAV está codificado com o número ${number}, que não pode ser lido aqui.`,
  channels: (channels, most) =>
    `Este WAV diz ter ${counted(channels, 'canal', 'canais')} (são possíveis de 1 a ${most}).`,
  sampleRate: (sampleRateHz, lowestHz, highestHz) =>
    `Este WAV diz ter taxa de amostragem de ${sampleRateHz}\u00a0Hz (são possíveis de ${lowestHz} a ${highestHz}).`,
  bits: (bits, bytesPerFrame, channels) =>
    `Este WAV diz ter ${counted(bits, 'bit', 'bits')} por amostra em ${counted(bytesPerFrame, 'byte', 'bytes')} por quadro de ${counted(channels, 'canal', 'canais')}, o que não pode ser lido.`,
  duration: {
    what: (hours, mostHours) => `Esta gravação dura ${hours} horas; são possíveis até ${mostHours}.`,
    advice: 'Corte-a.',
  },
  size: {
    what: (megabytes, mostMegabytes) =>
      `Esta gravação comprimida tem ${megabytes}\u00a0MB, mais que os ${mostMegabytes}\u00a0MB que um navegador consegue manter de uma vez.`,
    advice: 'Salve-a como WAV, que pode ter qualquer duração, ou corte-a.',
  },
};
